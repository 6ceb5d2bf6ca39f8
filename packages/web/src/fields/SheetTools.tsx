import * as words from '../words/fields.ts';
import { typedFigure } from './figureText.ts';
import type { Sheet } from './sheet.ts';

/** Undo, where there is something to take back, and Close, which writes nothing. */
export function SheetTools({ sheet: { state, changed, act } }: { readonly sheet: Sheet }) {
  const before = state.before === null ? words.noFigure : state.before && typedFigure(state.before);
  return (
    <div className="keypad-sheet-tools">
      {(changed || before !== undefined) && (
        <button type="button" className="key" onClick={() => act({ kind: 'undo' })}>
          <span>{words.undo}</span>
          <span className="keypad-sheet-what">{changed ? words.undoTyping : before}</span>
        </button>
      )}
      <button type="button" className="key" onClick={() => act({ kind: 'close' })}>
        {words.close}
      </button>
    </div>
  );
}
