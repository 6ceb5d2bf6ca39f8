import type { RefObject } from 'react';
import * as words from '../words/fields.ts';
import { saysId } from './SheetSays.tsx';
import type { Sheet } from './sheet.ts';

/** The line that is typed into, with its unit. */
export function SheetValue(props: {
  readonly label: string;
  readonly sheet: Sheet;
  readonly line: RefObject<HTMLInputElement | null>;
}) {
  const { entry, read, act } = props.sheet;
  return (
    <label className="keypad-sheet-value">
      <span>{props.label}</span>
      <span className="keypad-sheet-line">
        <input
          ref={props.line}
          inputMode="none"
          autoComplete="off"
          spellCheck={false}
          aria-describedby={saysId}
          aria-invalid={read.kind === 'refused'}
          size={Math.max(1, entry.text.length)}
          value={entry.text}
          onChange={(event) => act({ kind: 'type', text: event.target.value })}
        />
        <span aria-hidden="true">{words.unitWord(entry.unit)}</span>
      </span>
    </label>
  );
}
