import type { Template } from '@sagwright/records/schema/template';
import { type ReactNode, useState } from 'react';
import { files } from '../../words/files.ts';
import { templates as words } from '../../words/templates.ts';
import { SureToRemove } from '../SureToRemove.tsx';
import { saveTemplate } from './templateFiles.ts';

interface TemplateLineProps {
  readonly template: Template;
  readonly says: string;
  /** A machine begins a job, a shock or a fork goes into the one on the table; null where there is none. */
  readonly onTake: (() => void) | null;
  /** Null where it is not on the shelf. */
  readonly onRemove: (() => void) | null;
}

/** One template with what can be done with it; removing it asks first. */
export function TemplateLine({ template, says, onTake, onRemove }: TemplateLineProps) {
  const [asking, setAsking] = useState(false);
  const { name, note, kind } = template;
  const isMachine = kind === 'machine';
  return (
    <li>
      <div>
        <strong>{name}</strong>
        <p className="jobs-quiet">{[words.kind[kind], says].filter((each) => each !== '').join(' · ')}</p>
        {note !== undefined && <p className="jobs-quiet">{note}</p>}
      </div>
      {onRemove !== null && (
        <Key name={files.removeOf(name)} expanded={asking} onPress={() => setAsking(!asking)}>
          {files.remove}
        </Key>
      )}
      <Key name={files.toFileOf(name)} onPress={() => saveTemplate(template)}>
        {files.toFile}
      </Key>
      {onTake !== null && (
        <Key name={isMachine ? words.beginOf(name) : words.putOf(name)} onPress={onTake}>
          {isMachine ? words.begin : words.put}
        </Key>
      )}
      {asking && onRemove !== null && <SureToRemove onRemove={onRemove} onLeave={() => setAsking(false)} />}
    </li>
  );
}

interface KeyProps {
  readonly name: string;
  readonly expanded?: boolean;
  readonly onPress: () => void;
  readonly children: ReactNode;
}

function Key({ name, expanded, onPress, children }: KeyProps) {
  return (
    <button type="button" className="key" aria-label={name} aria-expanded={expanded} onClick={onPress}>
      {children}
    </button>
  );
}
