import './KeypadSheet.css';
import './key.css';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import type { KeyboardEvent } from 'react';
import * as words from '../words/fields.ts';
import type { Assumed } from './assumed.ts';
import { partsIn } from './fieldState.ts';
import { stepText } from './figureText.ts';
import { OriginKeys } from './OriginKeys.tsx';
import { Pad } from './Pad.tsx';
import { SheetSays } from './SheetSays.tsx';
import { SheetTools } from './SheetTools.tsx';
import { SheetValue } from './SheetValue.tsx';
import { SureKeys } from './SureKeys.tsx';
import type { Sheet } from './sheet.ts';
import { actionOfKey } from './sheetKeys.ts';
import { stepIn } from './steps.ts';
import { UnitKeys } from './UnitKeys.tsx';
import { useSheetFocus } from './useSheetFocus.ts';

interface KeypadSheetProps {
  readonly label: string;
  readonly reading: ReadingKind | undefined;
  readonly assumed: Assumed | undefined;
  readonly sheet: Sheet;
  /** After writing; `next` where the keyboard asked to go on to the next field. */
  readonly onWritten: (next: boolean) => void;
}

/** The sheet that a figure is typed into, in place of the system's keyboard. Its parts keep their places as one types. */
export function KeypadSheet({ label, reading, assumed, sheet, onWritten }: KeypadSheetProps) {
  const { state, entry, read, changed, canWrite, act } = sheet;
  const { dialog, valueLine, sureLine, line } = useSheetFocus(!changed);

  function write(next: boolean): void {
    if (!canWrite) return;
    act({ kind: 'write' });
    onWritten(next);
  }

  function keyDown(event: KeyboardEvent): void {
    event.stopPropagation(); // the page's own keys rest while the sheet is open
    const action = event.target instanceof HTMLInputElement ? actionOfKey(event) : undefined;
    if (action === undefined) return;
    event.preventDefault();
    if (action.kind === 'write') write(true);
    else act(action);
  }

  return (
    <dialog
      ref={dialog}
      className="keypad-sheet"
      aria-label={label}
      data-read={read.kind}
      data-about={read.kind === 'refused' ? read.about : undefined}
      onCancel={() => act({ kind: 'close' })}
      onClick={(event) => event.target === dialog.current && !changed && act({ kind: 'close' })}
      onKeyDown={keyDown}
    >
      <SheetValue label={label} sheet={sheet} line={valueLine} />
      <SheetTools sheet={sheet} />
      <SheetSays sheet={sheet} assumed={assumed} />
      <UnitKeys sheet={sheet} />
      <div className="keypad-sheet-doubt">
        <SureKeys sheet={sheet} reading={reading} line={sureLine} />
        <OriginKeys sheet={sheet} />
      </div>
      <Pad
        line={line}
        parts={entry.sure.kind === 'typed' ? null : partsIn(entry.unit)}
        step={stepText(stepIn(state.rules.step, entry.unit), entry.unit)}
        act={act}
      >
        <button
          type="button"
          className="key pad-write"
          data-do
          disabled={!canWrite}
          onClick={() => write(false)}
        >
          {words.writeKey(
            read.kind,
            `${entry.text.trim()}${words.afterNumber(entry.unit)}`,
            state.committed !== null,
          )}
        </button>
      </Pad>
    </dialog>
  );
}
