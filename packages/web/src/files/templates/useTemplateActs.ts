import type { JobDocument } from '@sagwright/records/schema';
import type { Template } from '@sagwright/records/schema/template';
import { jobFrom } from '@sagwright/workbench/template/begin';
import { type PartTemplate, put } from '@sagwright/workbench/template/put';
import { putWords } from '@sagwright/workbench/words/template';
import { useState } from 'react';
import { useStore } from '../../app/useJob.ts';
import { editsBetween } from '../../job/editsBetween.ts';
import type { JobStore } from '../../job/jobStore.ts';
import { templates as words } from '../../words/templates.ts';
import { openTemplate } from './templateFiles.ts';
import type { Templates } from './useTemplates.ts';

/** What was done last, and what is to be known of it. */
export interface Said {
  readonly title: string;
  readonly lines: readonly string[];
  /** Nothing came of it. */
  readonly refused: boolean;
}

/** What hands do with templates, and what is said of it; `job` is null where what lies on the table is none yet. */
export function useTemplateActs(
  job: JobDocument | null,
  keep: Templates['keep'],
  onBegin: (document: unknown) => void,
) {
  const store = useStore();
  const [said, setSaid] = useState<Said | null>(null);
  const keepOne = async (template: Template, says: (name: string) => string): Promise<void> => {
    const outcome = await keep(template);
    const isKept = outcome === 'kept';
    setSaid({ title: isKept ? says(template.name) : words[outcome], lines: [], refused: !isKept });
  };
  return {
    said,
    keep: (template: Template) => void keepOne(template, words.keptOne),
    takeIn: (template: Template) => void keepOne(template, words.takenIn),
    open: async (file: File): Promise<void> => {
      const opened = await openTemplate(file);
      if ('format' in opened) await keepOne(opened, words.takenIn);
      else setSaid({ title: opened[0]!, lines: opened.slice(1), refused: true });
    },
    take: (template: Template): void => {
      if (template.kind === 'machine') onBegin(jobFrom(template));
      else
        setSaid(
          job === null ? { title: words.notAJob, lines: [], refused: true } : putIn(template, job, store),
        );
    },
  };
}

/** One act of the job, which undo takes back whole. */
function putIn(template: PartTemplate, job: JobDocument, store: JobStore): Said {
  const there = put(template, job);
  if (!there.ok) {
    return {
      title: words.putNot(template.name),
      lines: there.problems.map(({ message }) => message),
      refused: true,
    };
  }
  store.act(words.putAct(template.name), (document) => editsBetween(document, there.job));
  return { title: words.putIn(template.name), lines: putWords(job, there), refused: false };
}
