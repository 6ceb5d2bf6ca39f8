import { parseJob } from '@sagwright/records/read';
import type { Template } from '@sagwright/records/schema/template';
import { useEffect, useMemo, useRef } from 'react';
import { useTable } from '../../app/useJob.ts';
import { SheetFrame } from '../../machine/SheetFrame.tsx';
import { templates as words } from '../../words/templates.ts';
import { ComparePart } from './ComparePart.tsx';
import { KeepPart } from './KeepPart.tsx';
import { shippedTemplates } from './shippedTemplates.ts';
import { KeptList, ShippedList } from './TemplateList.tsx';
import { type Said, useTemplateActs } from './useTemplateActs.ts';
import { useTemplates } from './useTemplates.ts';
import '../../fields/key.css';
import '../jobsSheet.css';
import './templatesSheet.css';

interface TemplatesSheetProps {
  /** A template from a file that was opened; null where none was. */
  readonly incoming: Template | null;
  readonly onBegin: (document: unknown) => void;
  readonly onClose: () => void;
}

/** Machines, shocks and forks kept on this device: kept, taken, copied, compared. */
export default function TemplatesSheet({ incoming, onBegin, onClose }: TemplatesSheetProps) {
  const { document } = useTable().state;
  const job = useMemo(() => {
    const read = parseJob(document);
    return read.ok ? read.job : null;
  }, [document]);
  const { kept, keep, remove } = useTemplates();
  const acts = useTemplateActs(job, keep, onBegin);
  useOnce(incoming, acts.takeIn);
  return (
    <div className="jobs-sheet">
      <SheetFrame title={words.title} note={words.note} onClose={onClose}>
        <SaidLast said={acts.said} />
        <div className="jobs-parts">
          <div className="template-own">
            <section className="sheet-part">
              <h3>{words.keepTitle}</h3>
              <KeepPart job={job} onKeep={acts.keep} />
            </section>
            <KeptList
              kept={kept}
              onTake={acts.take}
              onRemove={remove}
              onFile={(file) => void acts.open(file)}
            />
          </div>
          <ShippedList onTake={acts.take} />
        </div>
        <section className="sheet-part">
          <h3>{words.compareTitle}</h3>
          <ComparePart templates={[...(kept === 'unreadable' ? [] : kept), ...shippedTemplates]} />
        </section>
      </SheetFrame>
    </div>
  );
}

/** Read out as it comes, so the place for it is always there; brought into sight, since the key was further down. */
function SaidLast({ said }: { readonly said: Said | null }) {
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (said !== null) place.current?.scrollIntoView({ block: 'nearest' });
  }, [said]);
  return (
    <div
      ref={place}
      role="status"
      className="template-said"
      data-empty={said === null || undefined}
      data-refused={said?.refused || undefined}
    >
      {said !== null && (
        <>
          <strong>{said.title}</strong>
          {said.lines.map((line) => (
            <p key={line}>{line}</p>
          ))}
        </>
      )}
    </div>
  );
}

/** Takes what comes in once, however often the page is painted. */
function useOnce(incoming: Template | null, take: (template: Template) => void): void {
  const taken = useRef<Template | null>(null);
  useEffect(() => {
    if (incoming === null || taken.current === incoming) return;
    taken.current = incoming;
    take(incoming);
  });
}
