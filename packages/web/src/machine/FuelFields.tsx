import type { Quantity } from '@sagwright/records/schema/quantity';
import { differenceToSI, toSI } from '@sagwright/records/units';
import { defaultWidth } from '@sagwright/workbench/inputs/widths';
import type { AssumedFigure, PageView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { writeFigure } from '../job/figures.ts';
import { addFigure } from '../words/fields.ts';
import { fuel as words } from '../words/machine.ts';
import { assumedAt } from './assumedAt.ts';
import { SteppedFigure } from './SteppedFigure.tsx';
import type { OpenSheet } from './sheets.ts';

/** How far one press goes [m³]. */
const STEP = 0.001;

interface FuelFieldsProps {
  readonly view: PageView;
  readonly load: string;
  readonly onSheet: OpenSheet;
}

/** The fuel of a load: as it was at the weighing until somebody says otherwise. */
export function FuelFields({ view, load, onSheet }: FuelFieldsProps) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const { tank, weighing } = job.machine;
  const path = `loadCases.${load}.fuel`;
  if (tank === undefined) {
    return (
      <div className="sheet-needed">
        <p>{words.noTank}</p>
        <button
          type="button"
          className="key"
          onClick={() => onSheet({ kind: 'figures', path: 'machine.tank.capacity' })}
        >
          {addFigure}
        </button>
      </div>
    );
  }
  const weighed =
    weighing.fuel === undefined ? assumedAt(view, 'machine.weighing.fuel') : asWeighed(weighing.fuel);
  return (
    <div className="sheet-fields">
      <SteppedFigure
        label={words.label}
        path={path}
        quantity={job.loadCases[load]?.fuel}
        dimension="volume"
        bound="fuel"
        reading="fuel"
        step={STEP}
        assumed={weighed}
        onCommit={(quantity) => store.act(words.act, (document) => writeFigure(document, path, quantity))}
      />
    </div>
  );
}

function asWeighed({ value, unit, plusMinus, origin }: Quantity): AssumedFigure {
  const width = plusMinus ?? defaultWidth('fuel', origin);
  const si = toSI(value, unit);
  const halfWidth = width.unit === '%' ? (si * width.value) / 100 : differenceToSI(width.value, width.unit);
  return { value: si, halfWidth, unit, why: words.asWeighed };
}
