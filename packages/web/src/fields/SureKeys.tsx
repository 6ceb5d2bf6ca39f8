import type { Origin, Quantity } from '@sagwright/records/schema/quantity';
import type { Dimension, Unit } from '@sagwright/records/units';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import { type RefObject, useLayoutEffect } from 'react';
import * as words from '../words/fields.ts';
import { type Choice, ChoiceKeys } from './ChoiceKeys.tsx';
import type { Sure } from './draft.ts';
import { widthText } from './figureText.ts';
import { sureChoices } from './sureChoices.ts';

interface SureKeysProps {
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly reading: ReadingKind | undefined;
  readonly origin: Origin | undefined;
  readonly sure: Sure;
  readonly onSure: (sure: Sure) => void;
  /** The line of a ± that is typed. */
  readonly line: RefObject<HTMLInputElement | null>;
}

type Width = NonNullable<Quantity['plusMinus']>;

const other = 'other';

/** How sure: three round ±, or one that is typed. */
export function SureKeys({ dimension, unit, reading, origin, sure, onSure, line }: SureKeysProps) {
  const widths = sureChoices(dimension, unit, reading, origin);
  const kept = sure.kind === 'width' ? [sure, ...widths] : widths;
  const keys = widths.map((width): Choice => ({ value: codeOf(width), word: widthText(width) }));
  const all = [...new Map(kept.map((width) => [codeOf(width), widthText(width)]))].map(([value, word]) => ({
    value,
    word,
  }));

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
      all={[...all, { value: other, word: words.otherSure }]}
      onChoose={(code) => onSure(sureOf(code))}
    >
      {sure.kind === 'typed' && <SureLine text={sure.text} onSure={onSure} line={line} />}
    </ChoiceKeys>
  );
}

/** Where a ± of one's own is typed; left empty it is not said. */
function SureLine({ text, onSure, line }: { text: string } & Pick<SureKeysProps, 'onSure' | 'line'>) {
  useLayoutEffect(() => line.current?.focus(), [line]);
  return (
    <input
      ref={line}
      className="key choice-keys-line"
      aria-label={words.sureEntry}
      inputMode="none"
      autoComplete="off"
      placeholder="±"
      value={text}
      onChange={(event) => onSure({ kind: 'typed', text: event.target.value })}
      onBlur={() => text.trim() === '' && onSure({ kind: 'not said' })}
    />
  );
}

function codeOf({ value, unit }: { value: number; unit: Width['unit'] }): string {
  return `${value} ${unit}`;
}
