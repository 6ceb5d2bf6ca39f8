import type { JobDocument } from '@sagwright/records/schema';
import { type Template, type TemplateKind, templateKinds } from '@sagwright/records/schema/template';
import { keepTemplate } from '@sagwright/records/template/keep';
import { keptWords } from '@sagwright/workbench/words/template';
import { useState } from 'react';
import { TextField } from '../../fields/TextField.tsx';
import { templates as words } from '../../words/templates.ts';

interface KeepPartProps {
  /** Null where what lies on the table is no job yet. */
  readonly job: JobDocument | null;
  readonly onKeep: (template: Template) => void;
}

/** Keeps the machine of the job on the table, its shock or its fork, and says before what will not be in it. */
export function KeepPart({ job, onKeep }: KeepPartProps) {
  const [kind, setKind] = useState<TemplateKind | null>(null);
  if (job === null) return <p className="jobs-quiet">{words.notAJob}</p>;
  const kinds = templateKinds.filter((each) => keepTemplate(job, each, 'x').ok);
  return (
    <>
      <div className="template-kinds">
        {kinds.map((each) => (
          <button
            key={each}
            type="button"
            className="key"
            aria-expanded={kind === each}
            onClick={() => setKind(kind === each ? null : each)}
          >
            {words.keepKind[each]}
          </button>
        ))}
      </div>
      {kind !== null && (
        <Naming
          key={kind}
          job={job}
          kind={kind}
          onKeep={(template) => {
            setKind(null);
            onKeep(template);
          }}
          onLeave={() => setKind(null)}
        />
      )}
    </>
  );
}

interface NamingProps {
  readonly job: JobDocument;
  readonly kind: TemplateKind;
  readonly onKeep: (template: Template) => void;
  readonly onLeave: () => void;
}

function Naming({ job, kind, onKeep, onLeave }: NamingProps) {
  const [name, setName] = useState(words.nameOf(kind, job.machine.name));
  const [note, setNote] = useState('');
  const kept = keepTemplate(job, kind, name);
  if (!kept.ok) return null;
  return (
    <div className="template-naming">
      <TextField
        label={words.called}
        path={`template-name-${kind}`}
        value={name}
        most={120}
        onCommit={(text) => text !== '' && setName(text)}
      />
      <TextField
        label={words.ownNote}
        path={`template-note-${kind}`}
        value={note}
        most={4000}
        onCommit={setNote}
      />
      <ul className="template-says">
        {keptWords(job, kept).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <div className="template-kinds">
        <button
          type="button"
          className="key"
          data-do
          onClick={() => onKeep({ ...kept.template, ...(note !== '' && { note }) })}
        >
          {words.keep}
        </button>
        <button type="button" className="key" onClick={onLeave}>
          {words.leave}
        </button>
      </div>
    </div>
  );
}
