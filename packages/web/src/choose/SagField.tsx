import { QuantityField } from '../fields/QuantityField.tsx';
import { ShareField } from '../fields/ShareField.tsx';
import type { TargetRow } from '../job/targets.ts';

type Sag = TargetRow['wanted']['aim'];

interface SagFieldProps {
  readonly label: string;
  readonly path: string;
  readonly sag: Sag;
  readonly onCommit: (sag: Sag) => void;
}

/** A wanted sag: a share of the travel, or a length, as the row has it. */
export function SagField({ label, path, sag, onCommit }: SagFieldProps) {
  if (sag.unit === '%') {
    return (
      <ShareField
        label={label}
        path={path}
        value={sag.value}
        onCommit={(value) => value !== null && onCommit({ value, unit: '%' })}
      />
    );
  }
  return (
    <QuantityField
      label={label}
      path={path}
      quantity={{ value: sag.value, unit: sag.unit }}
      dimension="length"
      bound="wantedLength"
      step={0.001}
      onCommit={(quantity) => {
        if (
          quantity?.unit === 'mm' ||
          quantity?.unit === 'cm' ||
          quantity?.unit === 'm' ||
          quantity?.unit === 'in'
        ) {
          onCommit({ value: quantity.value, unit: quantity.unit });
        }
      }}
    />
  );
}
