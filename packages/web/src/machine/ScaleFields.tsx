import type { PageView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { QuantityField } from '../fields/QuantityField.tsx';
import { writeFigure } from '../job/figures.ts';
import { load as words } from '../words/machine.ts';
import { assumedAt } from './assumedAt.ts';

/** A load that was weighed with all of it aboard: two readings, and how high it lies. */
export function ScaleFields({ view, load }: { readonly view: PageView; readonly load: string }) {
  const { state, store } = useTable();
  const loadCase = jobOf(state).loadCases[load];
  if (loadCase === undefined || !('scales' in loadCase)) return null;
  const path = `loadCases.${load}.scales`;
  const usual = assumedAt(view, `${path}.addedHeight`);
  return (
    <div className="sheet-fields">
      {(['front', 'rear'] as const).map((end) => (
        <QuantityField
          key={end}
          label={words.scale[end]}
          path={`${path}.${end}`}
          quantity={loadCase.scales[end]}
          dimension="mass"
          bound="massOnWheel"
          reading="scale"
          step={0.5}
          onCommit={(quantity) =>
            store.act(words.scale[end], (document) => writeFigure(document, `${path}.${end}`, quantity))
          }
        />
      ))}
      <QuantityField
        label={words.addedHeight}
        path={`${path}.addedHeight`}
        quantity={loadCase.scales.addedHeight}
        dimension="length"
        bound="addedHeight"
        reading="placeHeight"
        {...(usual && { assumed: usual })}
        onCommit={(quantity) =>
          store.act(words.addedHeight, (document) => writeFigure(document, `${path}.addedHeight`, quantity))
        }
      />
    </div>
  );
}
