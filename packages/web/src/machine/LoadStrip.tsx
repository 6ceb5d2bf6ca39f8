import type { LoadView } from '@sagwright/workbench/page/shapes';
import { memo, useEffect, useRef } from 'react';
import { loads as words } from '../words/machine.ts';
import { LoadSign } from './LoadSign.tsx';
import type { OpenSheet } from './sheets.ts';
import { useNewLoad } from './useNewLoad.ts';
import './loadStrip.css';

interface LoadStripProps {
  readonly loads: readonly LoadView[];
  readonly chosen: string | null;
  readonly onChoose: (load: string | null) => void;
  readonly onSheet: OpenSheet;
}

/** The loads, the machine alone first: which one is looked at, and a key for a new one. */
export const LoadStrip = memo(function LoadStrip({ loads, chosen, onChoose, onSheet }: LoadStripProps) {
  const addLoad = useNewLoad(onChoose, onSheet);
  const here = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    const key = here.current;
    const strip = key?.parentElement;
    if (chosen === undefined || key === null || !strip) return;
    // Also as the strip becomes narrower, beside the springs.
    const observer = new ResizeObserver(() => {
      strip.scrollLeft = key.offsetLeft + key.offsetWidth / 2 - strip.clientWidth / 2;
    });
    observer.observe(strip);
    return () => observer.disconnect();
  }, [chosen]);
  return (
    <fieldset className="load-strip" aria-label={words.label}>
      {loads.map((load) => (
        <button
          key={load.id ?? ''}
          ref={load.id === chosen ? here : null}
          type="button"
          className="load-strip-load"
          aria-pressed={load.id === chosen}
          data-refused={load.refused || undefined}
          onClick={() => onChoose(load.id)}
        >
          <span className="load-strip-name">{load.id === null ? words.alone : load.name}</span>
          <LoadSign letter={load.letter} />
          <span className="load-strip-mass">
            {massOf(load)}
            {load.refused && <TooMuch />}
          </span>
        </button>
      ))}
      <button type="button" className="load-strip-new" onClick={() => addLoad(chosen)}>
        <span aria-hidden="true" className="load-strip-plus">
          +
        </span>
        {words.newLoad}
      </button>
    </fieldset>
  );
});

function massOf({ total }: LoadView): string {
  return total === null ? words.noMass : `${total.value} ${total.unit}`;
}

/** The sign that a limit is passed: a triangle, said aloud. */
function TooMuch() {
  return (
    <svg className="load-strip-over" viewBox="0 0 20 18" width="20" height="18" role="img">
      <title>{words.refused}</title>
      <path d="M10 1 19 17H1Z" />
    </svg>
  );
}
