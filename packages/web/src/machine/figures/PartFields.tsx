import type { PageView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { FigureField } from './FigureField.tsx';
import type { FigurePart } from './figure.ts';

interface PartFieldsProps {
  readonly part: FigurePart;
  readonly view: PageView | null;
  /** A field of it was gone to: then it is unfolded. */
  readonly isAsked: boolean;
}

/** The fields of one part; where the job has nothing of it, a key that brings them. */
export function PartFields({ part, view, isAsked }: PartFieldsProps) {
  const { title, figures, add } = part;
  const [added, setAdded] = useState(false);
  const isFolded = add !== undefined && !added && !isAsked;
  return (
    <section className="sheet-part">
      {title !== null && <h3>{title}</h3>}
      {isFolded ? (
        <div className="sheet-keys">
          <button type="button" className="key" onClick={() => setAdded(true)}>
            {add}
          </button>
        </div>
      ) : (
        <div className="sheet-fields">
          {figures.map((figure) => (
            <FigureField key={figure.path} figure={figure} view={view} />
          ))}
        </div>
      )}
    </section>
  );
}
