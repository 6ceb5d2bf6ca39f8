import type { LoadView } from '@sagwright/workbench/page/shapes';
import { Button } from 'react-aria-components/Button';
import { loads as words } from '../words/page.ts';
import './loadStrip.css';

interface LoadStripProps {
  readonly loads: readonly LoadView[];
  readonly chosen: string | null;
  readonly onChoose: (load: string | null) => void;
  readonly onNew: () => void;
}

/** The loads, the machine alone first: which one is looked at, and a key for a new one. */
export function LoadStrip({ loads, chosen, onChoose, onNew }: LoadStripProps) {
  return (
    <fieldset className="load-strip" aria-label={words.label}>
      {loads.map((load) => (
        <Button
          key={load.id ?? ''}
          className="load-strip-load"
          aria-pressed={load.id === chosen}
          data-refused={load.refused || undefined}
          onPress={() => onChoose(load.id)}
        >
          <LoadSign letter={load.letter} />
          <span className="load-strip-words">
            <span className="load-strip-name">{load.id === null ? words.alone : load.name}</span>
            <span className="load-strip-mass">
              {load.total === null ? '' : `${load.total.value} ${load.total.unit}`}
            </span>
          </span>
        </Button>
      ))}
      <Button className="load-strip-new" onPress={onNew}>
        <span aria-hidden="true" className="load-strip-plus">
          +
        </span>
        {words.newLoad}
      </Button>
    </fieldset>
  );
}

/** A ringed letter; two wheels for the machine alone. */
export function LoadSign({ letter }: { readonly letter: string | null }) {
  if (letter === null) {
    return (
      <svg className="load-sign" viewBox="0 0 36 20" width="36" height="20" aria-hidden="true">
        <path d="M8 19a6 6 0 1 1 0-12 6 6 0 0 1 0 12Zm20 0a6 6 0 1 1 0-12 6 6 0 0 1 0 12ZM8 13l8-7h8l4 7" />
      </svg>
    );
  }
  return <span className="load-letter">{letter}</span>;
}
