import './KeypadSheet.css';
import './key.css';
import { type Origin, origins } from '@sagwright/records/schema/quantity';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import { type KeyboardEvent, useId, useLayoutEffect, useRef } from 'react';
import * as words from '../words/fields.ts';
import { ChoiceKeys } from './ChoiceKeys.tsx';
import { type Entry, type FieldState, sameEntry } from './draft.ts';
import { type FieldAction, partsIn } from './fieldState.ts';
import { figureNumber, typedFigure } from './figureText.ts';
import { firstOrigins } from './originChoices.ts';
import { Pad } from './Pad.tsx';
import type { Assumed } from './QuantityField.tsx';
import { type EntryRead, readEntry, readFigure } from './readEntry.ts';
import { SureKeys } from './SureKeys.tsx';
import { stepIn } from './steps.ts';
import { UnitKeys } from './UnitKeys.tsx';

interface KeypadSheetProps {
  readonly label: string;
  readonly reading?: ReadingKind;
  readonly assumed?: Assumed;
  readonly state: FieldState;
  readonly entry: Entry;
  readonly act: (action: FieldAction) => void;
  /** After writing; `next` where the keyboard asked to go on to the next field. */
  readonly onWritten: (next: boolean) => void;
}

/** The sheet that a figure is typed into, in place of the system's keyboard. */
export function KeypadSheet({ label, reading, assumed, state, entry, act, onWritten }: KeypadSheetProps) {
  const { rules, committed } = state;
  const read = readEntry(entry, rules);
  const number = readFigure(entry);
  const changed = !sameEntry(entry, state.opened);
  const { dialog, valueLine, sureLine, line } = useSheet();
  const id = useId();

  function write(next: boolean): void {
    if (read.kind === 'refused' || (read.kind === 'empty' && committed === null)) return;
    act({ kind: 'write' });
    onWritten(next);
  }

  const step = stepIn(rules.step, entry.unit);
  return (
    <dialog
      ref={dialog}
      className="keypad-sheet"
      aria-label={label}
      data-read={read.kind}
      onCancel={(event) => {
        event.preventDefault();
        act({ kind: 'close' });
      }}
      onClick={(event) => event.target === dialog.current && !changed && act({ kind: 'close' })}
      onKeyDown={(event) => keyPressed(event, act, () => write(true))}
    >
      <div className="keypad-sheet-value">
        <label htmlFor={id}>{label}</label>
        <span className="keypad-sheet-line">
          <input
            ref={valueLine}
            id={id}
            inputMode="none"
            autoComplete="off"
            spellCheck={false}
            aria-describedby={`${id}-says`}
            aria-invalid={read.kind === 'refused'}
            value={entry.text}
            onChange={(event) => act({ kind: 'type', text: event.target.value })}
          />
          <span>{words.unitWord(entry.unit)}</span>
        </span>
      </div>
      <div className="keypad-sheet-tools">
        {(changed || state.before !== undefined) && (
          <button type="button" className="key" onClick={() => act({ kind: 'undo' })}>
            {changed ? words.undoTyping : words.undoWriting(state.before ? typedFigure(state.before) : null)}
          </button>
        )}
        <button type="button" className="key" onClick={() => act({ kind: 'close' })}>
          {words.close}
        </button>
      </div>
      <Says id={`${id}-says`} read={read} entry={entry} state={state} assumed={assumed} act={act} />
      <UnitKeys
        dimension={rules.dimension}
        entry={entry}
        quantity={number}
        onUnit={(unit) => act({ kind: 'unit', unit })}
      />
      <div className="keypad-sheet-doubt">
        <SureKeys
          dimension={rules.dimension}
          unit={entry.unit}
          reading={reading}
          origin={entry.origin}
          sure={entry.sure}
          onSure={(sure) => act({ kind: 'sure', sure })}
          line={sureLine}
        />
        <ChoiceKeys
          label={words.whereFrom}
          chosen={entry.origin ?? ''}
          keys={firstOrigins(rules.dimension).map(asChoice)}
          all={origins.map(asChoice)}
          onChoose={(value) => act({ kind: 'origin', origin: origins.find((each) => each === value) })}
        />
      </div>
      <Pad
        line={line}
        parts={entry.sure.kind === 'typed' ? null : partsIn(entry.unit)}
        step={String(step)}
        onFraction={() => act({ kind: 'fraction' })}
        onStep={(times) => act({ kind: 'step', times })}
      >
        <button
          type="button"
          className="key pad-write"
          data-do
          disabled={read.kind === 'refused' || (read.kind === 'empty' && committed === null)}
          onClick={() => write(false)}
        >
          {writeWord(read, committed !== null, entry)}
        </button>
      </Pad>
    </dialog>
  );
}

/** What the line says, aloud too; or why it says nothing, with ways to write what may have been meant. */
function Says(props: {
  id: string;
  read: EntryRead;
  entry: Entry;
  state: FieldState;
  assumed: Assumed | undefined;
  act: (action: FieldAction) => void;
}) {
  const { read, state, assumed, entry } = props;
  const kept =
    state.committed && !sameEntry(entry, state.opened) ? words.onFile(typedFigure(state.committed)) : null;
  return (
    <div className="keypad-sheet-says">
      <p id={props.id} role="status">
        {read.kind === 'refused' && read.why}
        {read.kind === 'figure' && words.reads(typedFigure(read.quantity))}
        {read.kind === 'empty' && words.nothingTyped}
        {read.kind !== 'refused' && kept && ` ${kept}`}
        {read.kind === 'empty' &&
          assumed &&
          ` ${words.assumedNow(`${figureNumber(assumed.value, assumed.halfWidth, entry.unit)} ${words.unitWord(entry.unit)}`, assumed.why)}`}
      </p>
      {read.kind === 'refused' &&
        read.either.map((text) => (
          <button key={text} type="button" className="key" onClick={() => props.act({ kind: 'type', text })}>
            {text}
          </button>
        ))}
    </div>
  );
}

/** The dialog over the page, the focus in its line, and the line that the pad types into. */
function useSheet() {
  const dialog = useRef<HTMLDialogElement>(null);
  const valueLine = useRef<HTMLInputElement>(null);
  const sureLine = useRef<HTMLInputElement>(null);
  useLayoutEffect(() => {
    const sheet = dialog.current!;
    sheet.showModal();
    valueLine.current!.focus();
    if (valueLine.current!.value.length > 1) valueLine.current!.select();
    return () => sheet.close(); // gives the focus back to the field
  }, []);
  const line = (): HTMLInputElement => sureLine.current ?? valueLine.current!;
  return { dialog, valueLine, sureLine, line };
}

function keyPressed(event: KeyboardEvent, act: (action: FieldAction) => void, writeNext: () => void): void {
  event.stopPropagation(); // the page's own keys rest while the sheet is open
  const inLine = event.target instanceof HTMLInputElement;
  const action = inLine && !event.altKey && !event.metaKey ? actionOf(event) : undefined;
  if (action === 'write') writeNext();
  else if (action) act(action);
  if (action) event.preventDefault();
}

function actionOf({ key, shiftKey, ctrlKey }: KeyboardEvent): FieldAction | 'write' | undefined {
  if (ctrlKey) return key === 'z' ? { kind: 'undo' } : undefined;
  switch (key) {
    case 'Enter':
      return 'write';
    case 'u':
    case 'U':
      return { kind: 'next unit' };
    case 'o':
    case 'O':
      return { kind: 'next origin' };
    case 'ArrowUp':
      return { kind: 'step', times: shiftKey ? 10 : 1 };
    case 'ArrowDown':
      return { kind: 'step', times: shiftKey ? -10 : -1 };
    default:
      return undefined;
  }
}

function writeWord(read: EntryRead, hasFigure: boolean, entry: Entry): string {
  if (read.kind === 'figure') return words.writeFigure(`${entry.text.trim()} ${words.unitWord(entry.unit)}`);
  if (read.kind === 'refused') return words.notReadable;
  return hasFigure ? words.takeAway : words.typeFigure;
}

function asChoice(origin: Origin) {
  return { value: origin, word: origin };
}
