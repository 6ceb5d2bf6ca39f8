import type { LoadView, ThingView } from '@sagwright/workbench/page/shapes';
import { thing as words } from '../words/machine.ts';
import type { OpenSheet } from './sheets.ts';
import './thingList.css';

/** What is aboard, each with what it does on the scales; a key for something more. */
export function ThingList({ load, onSheet }: { readonly load: LoadView; readonly onSheet: OpenSheet }) {
  if (load.id === null) return <p className="thing-list-none">{words.noneAlone}</p>;
  if (load.weighed) return <p className="thing-list-none">{words.weighed}</p>;
  return (
    <ul className="thing-list">
      {load.things.map((thing) => (
        <li key={thing.aboardId}>
          <button
            type="button"
            data-over={thing.over || undefined}
            onClick={() => onSheet({ kind: 'thing', id: thing.aboardId })}
          >
            <span className="thing-list-name">{thing.label}</span>
            <b>{thing.mass}</b>
            <span className="thing-list-effect">{effectOf(thing)}</span>
          </button>
        </li>
      ))}
      <li>
        <button type="button" className="thing-list-put-on" onClick={() => onSheet({ kind: 'put on' })}>
          {words.putOn}
        </button>
      </li>
    </ul>
  );
}

function effectOf({ effect, over, offset }: ThingView): string {
  if (effect === null) return over ? words.over : offset;
  return words.onWheels(effect.rear.value, effect.front.value, effect.rear.unit);
}
