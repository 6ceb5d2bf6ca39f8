import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
import { useEffect, useRef, useState } from 'react';
import { jobOf, useTable } from '../../app/useJob.ts';
import { figures as words } from '../../words/figures.ts';
import { SheetFrame } from '../SheetFrame.tsx';
import type { MachineSheet, OpenSheet } from '../sheets.ts';
import { BesideFields } from './BesideFields.tsx';
import { figureFor, figureGroups, groupToAddIn } from './groups.ts';
import { PartFields } from './PartFields.tsx';
import './figuresSheet.css';

interface FiguresSheetProps {
  /** Null while the job has no plan yet: then nothing is assumed. */
  readonly view: PageView | null;
  /** The load that is looked at; none while there is no plan. */
  readonly load: LoadView | null;
  /** What was gone to last; gone to again whenever it is asked again. */
  readonly asked: Extract<MachineSheet, { kind: 'figures' }>;
  readonly onSheet: OpenSheet;
}

/** The machine's own figures, one group in sight at a time. With a path, its group is shown and its field opened. */
export default function FiguresSheet({ view, load, asked, onSheet }: FiguresSheetProps) {
  const { path } = asked;
  const { state } = useTable();
  const job = jobOf(state);
  const groups = figureGroups(job);
  const wanted = path === null ? null : figureFor(groups, path);
  const toAdd = path === null || wanted !== null ? null : groupToAddIn(path);
  const wantedGroup = wanted?.group ?? toAdd?.group ?? null;
  const [shown, setShown] = useState(wantedGroup ?? groups[0]!.id);
  const [seen, setSeen] = useState(asked);
  const body = useRef<HTMLDivElement>(null);
  if (asked !== seen) {
    setSeen(asked);
    if (wantedGroup !== null) setShown(wantedGroup);
  }
  const field = useRef<string | null>(null);
  field.current = wanted?.figure.path ?? toAdd?.field ?? null;
  useEffect(() => {
    if (asked.path !== null && field.current !== null) goTo(body.current, field.current);
  }, [asked]);
  const group = groups.find(({ id }) => id === shown) ?? groups[0]!;
  return (
    <SheetFrame title={words.title} note={words.note} onClose={view === null ? null : () => onSheet(null)}>
      {job.note !== undefined && <p>{job.note}</p>}
      <nav className="figures-groups" aria-label={words.goTo}>
        {groups.map(({ id, title }) => (
          <button
            key={id}
            type="button"
            className="key"
            aria-pressed={id === group.id}
            onClick={() => setShown(id)}
          >
            {title}
          </button>
        ))}
      </nav>
      <div className="figures-body" ref={body}>
        {group.parts.map((part) => (
          <PartFields
            key={part.figures[0]?.path ?? part.title}
            part={part}
            view={view}
            isAsked={wanted !== null && part.figures.includes(wanted.figure)}
          />
        ))}
        <BesideFields
          group={group.id}
          travel={job.machine.rear.travel}
          view={view}
          load={load}
          onSheet={onSheet}
        />
      </div>
    </SheetFrame>
  );
}

/** Brings a field into sight; a figure that is needed is opened at once, since that is what one came for. */
function goTo(body: HTMLElement | null, path: string): void {
  const field = body?.querySelector<HTMLElement>(`[id="${CSS.escape(path)}"]`);
  const face = field?.querySelector<HTMLElement>('[data-field-face], button');
  field?.scrollIntoView({ block: 'center' });
  face?.focus({ preventScroll: true });
  if (field?.dataset.state === 'needed') face?.click();
}
