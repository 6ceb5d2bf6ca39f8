import * as words from '../words/fields.ts';
import type { Assumed } from './assumed.ts';
import { figureNumber, typedFigure } from './figureText.ts';
import type { Sheet } from './sheet.ts';

/** There is one sheet at a time. */
export const saysId = 'keypad-sheet-says';

/** What the line says, aloud too; or why it says nothing yet, with ways to write what may have been meant. */
export function SheetSays({
  sheet,
  assumed,
}: {
  readonly sheet: Sheet;
  readonly assumed: Assumed | undefined;
}) {
  const { read, act } = sheet;
  return (
    <div className="keypad-sheet-says">
      <p id={saysId} role="status">
        {sentence(sheet, assumed)}
      </p>
      {read.kind === 'refused' &&
        read.either.map((text) => (
          <button key={text} type="button" className="key" onClick={() => act({ kind: 'type', text })}>
            {text}
          </button>
        ))}
    </div>
  );
}

function sentence({ read, state, entry }: Sheet, assumed: Assumed | undefined): string {
  if (read.kind === 'refused') return read.why;
  if (read.kind === 'figure') {
    const figure = typedFigure(read.quantity);
    const onFile = state.committed ? typedFigure(state.committed) : figure;
    return words.reads(figure, onFile === figure ? undefined : onFile);
  }
  if (assumed === undefined) return words.nothingTyped;
  const figure = figureNumber(assumed.value, assumed.halfWidth, entry.unit);
  return words.assumedNow(`${figure}${words.afterNumber(entry.unit)}`, assumed.why);
}
