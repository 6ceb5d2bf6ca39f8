import { bounds } from '@sagwright/records/schema/bounds';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import type { BoundName } from '../fields/judge.ts';
import { QuantityField } from '../fields/QuantityField.tsx';
import type { FirstEntries } from '../job/firstJob.ts';
import { usualRatio } from '../job/firstJob.ts';
import { first as words } from '../words/first.ts';

/** What was typed so far; null: left out on purpose. */
export type FirstTyped = { readonly [K in keyof FirstEntries]?: FirstEntries[K] | undefined };

interface FirstFieldProps {
  readonly name: Exclude<keyof FirstEntries, 'shocks'>;
  readonly label: string;
  readonly bound: BoundName;
  readonly reading: ReadingKind;
  /** Said where it may be left out. */
  readonly empty?: string;
  readonly typed: FirstTyped;
  readonly onTyped: (typed: FirstTyped) => void;
}

/** One of the eight entries; the ratio of two shocks has a usual figure until it is read. */
export function FirstField({ name, label, bound, reading, empty, typed, onTyped }: FirstFieldProps) {
  const isUsual = name === 'ratio' && typed.shocks === 2;
  const assumed = {
    value: usualRatio.value,
    halfWidth: usualRatio.plusMinus!.value,
    why: words.usualRatio,
  };
  return (
    <QuantityField
      label={label}
      path={`first.${name}`}
      quantity={typed[name] ?? undefined}
      dimension={bounds[bound].dimension}
      bound={bound}
      reading={reading}
      {...(isUsual && { assumed, small: true })}
      {...(empty !== undefined && { empty })}
      onCommit={(quantity: Quantity | null) => onTyped({ ...typed, [name]: quantity ?? undefined })}
    />
  );
}
