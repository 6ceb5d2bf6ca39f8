import type { Quantity } from '@sagwright/records/schema/quantity';
import type { Unit } from '@sagwright/records/units';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import { type RefObject, useLayoutEffect } from 'react';
import * as words from '../words/fields.ts';
import { type Choice, ChoiceKeys } from './ChoiceKeys.tsx';
import type { Sure } from './draft.ts';
import { typedFigure } from './figureText.ts';
import type { Sheet } from './sheet.ts';
import { sureChoices } from './sureChoices.ts';

interface SureKeysProps {
  readonly sheet: Sheet;
  readonly reading: ReadingKind | undefined;
  /** The line of a ± that is typed. */
  readonly line: RefObject<HTMLInputElement | null>;
}

type Width = NonNullable<Quantity['plusMinus']>;

const other = 'other';

/** How sure: three round ±, or one that is typed. */
export function SureKeys({ sheet: { state, entry, act }, reading, line }: SureKeysProps) {
  const { sure, unit, origin } = entry;
  const widths = sureChoices(state.rules.dimension, unit, reading, origin);
  const kept = sure.kind === 'width' ? [sure, ...widths] : widths;
  const keys = widths.map((width): Choice => ({ value: codeOf(width), word: typedFigure(width) }));
  const all = [...new Map(kept.map((width) => [codeOf(width), `± ${typedFigure(width)}`]))].map(
    ([value, word]) => ({
      value,
      word,
    }),
  );

  function onSure(sure: Sure): void {
    act({ kind: 'sure', sure });
  }

  function sureOf(code: string): Sure {
    if (code === other) return { kind: 'typed', text: '' };
    const width = kept.find((each) => codeOf(each) === code);
    return width ? { kind: 'width', value: width.value, unit: width.unit, own: true } : { kind: 'not said' };
  }

  return (
    <ChoiceKeys
      label={words.howSure}
      chosen={sure.kind === 'width' ? codeOf(sure) : ''}
      keys={keys}
      none={words.sureNotSaid}
      all={[...all, { value: other, word: words.otherSure }]}
      onChoose={(code) => onSure(sureOf(code))}
    >
      {sure.kind === 'typed' && <SureLine text={sure.text} unit={unit} onSure={onSure} line={line} />}
    </ChoiceKeys>
  );
}

/** Where a ± of one's own is typed; left empty it is not said. */
function SureLine({
  text,
  unit,
  onSure,
  line,
}: {
  text: string;
  unit: Unit;
  onSure: (sure: Sure) => void;
  line: RefObject<HTMLInputElement | null>;
}) {
  useLayoutEffect(() => line.current?.focus(), [line]);
  return (
    <label className="key choice-keys-line">
      <span aria-hidden="true">±</span>
      <input
        ref={line}
        aria-label={words.sureEntry}
        inputMode="none"
        autoComplete="off"
        value={text}
        onChange={(event) => onSure({ kind: 'typed', text: event.target.value })}
        onBlur={() => text.trim() === '' && onSure({ kind: 'not said' })}
      />
      {!text.includes('%') && <span aria-hidden="true">{words.unitWord(unit)}</span>}
    </label>
  );
}

function codeOf({ value, unit }: { value: number; unit: Width['unit'] }): string {
  return `${value} ${unit}`;
}
