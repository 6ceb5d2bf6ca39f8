import type { Quantity } from '@sagwright/records/schema/quantity';
import { QuantityField } from '../fields/QuantityField.tsx';
import { load as words } from '../words/machine.ts';

const ends = ['front', 'rear'] as const;
type End = (typeof ends)[number];

interface ScaleReadingsProps {
  /** Where the readings stand, so that each field can be gone to. */
  readonly path: string;
  readonly read: { readonly [E in End]?: Quantity<'mass'> };
  readonly onCommit: (end: End, reading: Quantity | null) => void;
}

/** What two scales read with all of a load aboard. */
export function ScaleReadings({ path, read, onCommit }: ScaleReadingsProps) {
  return ends.map((end) => (
    <QuantityField
      key={end}
      label={words.scale[end]}
      path={`${path}.${end}`}
      quantity={read[end]}
      dimension="mass"
      bound="massOnWheel"
      reading="scale"
      step={0.5}
      onCommit={(reading) => onCommit(end, reading)}
    />
  ));
}
