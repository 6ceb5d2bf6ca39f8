import type { EndView } from '@sagwright/workbench/page/shapes';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { type BandUnit, inUnit } from '../job/band.ts';
import type { TargetRow } from '../job/targets.ts';
import { unitWord } from '../words/fields.ts';
import { targets as words } from '../words/targets.ts';
import { SagField } from './SagField.tsx';

type Wanted = TargetRow['wanted'];

interface BandFieldsProps {
  readonly path: string;
  readonly wanted: Wanted;
  /** The end that it is wanted of: a share of its travel becomes a length by it. */
  readonly end: EndView;
  readonly onChange: (wanted: Wanted) => void;
}

/** A wanted sag: its aim within a band, and how it is counted. */
export function BandFields({ path, wanted, end, onChange }: BandFieldsProps) {
  const { unit } = wanted.aim;
  const units = [...new Set<BandUnit>(['%', 'mm', 'in', unit])];
  const travel = { wheel: end.travelMaxMm / 1000, stroke: end.strokeMaxMm / 1000 };
  return (
    <>
      {(['low', 'high', 'aim'] as const).map((name) => (
        <SagField key={name} path={path} name={name} wanted={wanted} onChange={onChange} />
      ))}
      <ChoiceField
        label={words.unit}
        path={`${path}.unit`}
        value={unit}
        choices={units.map((each) => ({ value: each, word: unitWord(each) }))}
        onCommit={(next) => onChange(inUnit(wanted, next, travel))}
      />
      <ChoiceField
        label={words.from}
        path={`${path}.from`}
        value={wanted.from}
        choices={(['stop', 'hanging'] as const).map((each) => ({ value: each, word: words.froms[each] }))}
        onCommit={(from) => onChange({ ...wanted, from })}
      />
      <ChoiceField
        label={words.along}
        path={`${path}.along`}
        value={wanted.along}
        choices={(['wheel', 'stroke'] as const).map((each) => ({ value: each, word: words.alongs[each] }))}
        onCommit={(along) => onChange({ ...wanted, along })}
      />
    </>
  );
}
