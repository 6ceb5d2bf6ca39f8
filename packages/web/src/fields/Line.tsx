import './Line.css';
import { type HTMLAttributes, type ReactNode, useId } from 'react';
import type { useLine } from './useLine.ts';

interface LineProps {
  readonly label: string;
  readonly path: string;
  readonly line: Omit<ReturnType<typeof useLine>, 'commit'> & { readonly commit: () => void };
  readonly inputMode?: HTMLAttributes<HTMLInputElement>['inputMode'];
  readonly unit?: string;
  /** Keys beside the line. */
  readonly children?: ReactNode;
}

/** A labelled line of text in the look of the fields. */
export function Line({ label, path, line, inputMode = 'text', unit, children }: LineProps) {
  const id = useId();
  return (
    <div className="line" id={path}>
      <div className="line-row">
        <label className="line-face" data-figure={unit === undefined ? undefined : true}>
          <span className="line-label">{label}</span>
          <span className="line-text">
            <input
              data-field-face
              autoComplete="off"
              inputMode={inputMode}
              size={unit === undefined ? undefined : Math.max(1, line.text.length)}
              aria-invalid={line.why !== null}
              aria-describedby={line.why === null ? undefined : id}
              value={line.text}
              onChange={(event) => line.type(event.target.value)}
              onBlur={line.commit}
              onKeyDown={(event) => {
                if (event.key === 'Enter') line.commit();
                if (event.key === 'Escape') line.cancel();
              }}
            />
            {unit !== undefined && <span className="line-unit">{unit}</span>}
          </span>
        </label>
        {children}
      </div>
      {line.why !== null && (
        <p className="line-fault" id={id} role="alert">
          {line.why}
        </p>
      )}
    </div>
  );
}
