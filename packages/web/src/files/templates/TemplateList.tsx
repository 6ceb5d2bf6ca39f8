import type { Template } from '@sagwright/records/schema/template';
import { files } from '../../words/files.ts';
import { templates as words } from '../../words/templates.ts';
import { FileKey } from '../FileKey.tsx';
import { momentHere } from '../momentHere.ts';
import { shippedTemplates } from './shippedTemplates.ts';
import { TemplateLine } from './TemplateLine.tsx';
import type { Templates } from './useTemplates.ts';

interface KeptListProps {
  readonly kept: Templates['kept'];
  readonly onTake: (template: Template) => void;
  readonly onRemove: (id: string) => void;
  readonly onFile: (file: File) => void;
}

/** What is kept on this device, and the key that opens a file. */
export function KeptList({ kept, onTake, onRemove, onFile }: KeptListProps) {
  return (
    <section className="sheet-part">
      <h3>{words.onDevice}</h3>
      <FileKey onFile={onFile}>{words.fromFile}</FileKey>
      {kept === 'unreadable' && <p className="jobs-quiet">{words.unreadable}</p>}
      {kept !== 'unreadable' && kept.length === 0 && <p className="jobs-quiet">{words.none}</p>}
      <ul className="jobs-list">
        {(kept === 'unreadable' ? [] : kept).map(({ id, template, kept: moment }) => (
          <TemplateLine
            key={id}
            template={template}
            says={files.keptAt(momentHere(moment))}
            onTake={() => onTake(template)}
            onRemove={() => onRemove(id)}
          />
        ))}
      </ul>
    </section>
  );
}

/** What is shipped: invented, to be tried. */
export function ShippedList({ onTake }: Pick<KeptListProps, 'onTake'>) {
  return (
    <section className="sheet-part">
      <h3>{words.shipped}</h3>
      <p className="jobs-quiet">{words.invented}</p>
      <ul className="jobs-list">
        {shippedTemplates.map(({ id, template }) => (
          <TemplateLine
            key={id}
            template={template}
            says=""
            onTake={() => onTake(template)}
            onRemove={null}
          />
        ))}
      </ul>
    </section>
  );
}
