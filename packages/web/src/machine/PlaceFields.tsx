import type { JobDocument } from '@sagwright/records/schema';
import type { PageView } from '@sagwright/workbench/page/shapes';
import { jobOf, useTable } from '../app/useJob.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { QuantityField } from '../fields/QuantityField.tsx';
import { write } from '../job/edits.ts';
import { writeFigure } from '../job/figures.ts';
import { atPlace, placesInOrder } from '../job/places.ts';
import { place as words } from '../words/machine.ts';
import { asQuantity } from './assumedAt.ts';
import { SteppedFigure } from './SteppedFigure.tsx';

/** How far one press moves a place [m]. */
const STEP = 0.01;

/** Where a place is and what it may bear. Moving it moves everything that lies there, in every load. */
export function PlaceFields({ view, id }: { readonly view: PageView; readonly id: string }) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const place = job.machine.places[id];
  if (place === undefined) return null;
  const path = `machine.places.${id}`;
  const usual = view.usualPlaces[place.kind];
  const together = {
    at: `${path}.at`,
    needs: { x: asQuantity(usual.x), height: asQuantity(usual.height) },
  };
  const { things, loads } = atPlace(job, id);
  const names = things.map((thing) => job.things[thing]?.name ?? thing);
  return (
    <section className="sheet-part">
      <h3>{words.title(place.name)}</h3>
      <p>{words.moves(names, loads)}</p>
      <div className="sheet-fields">
        {(['x', 'height'] as const).map((axis) => (
          <SteppedFigure
            key={axis}
            label={words.at[axis]}
            path={`${path}.at.${axis}`}
            quantity={place.at?.[axis]}
            dimension="length"
            bound={axis === 'x' ? 'forwardOfRearAxle' : 'height'}
            reading={axis === 'x' ? 'luggagePlace' : 'placeHeight'}
            step={STEP}
            assumed={place.at === undefined ? usual[axis] : undefined}
            onCommit={(quantity) =>
              store.act(words.moved(place.name), (document) =>
                writeFigure(document, `${path}.at.${axis}`, quantity, together),
              )
            }
          />
        ))}
      </div>
      <details className="sheet-more">
        <summary>{words.more}</summary>
        <div className="sheet-fields">
          <QuantityField
            label={words.limit}
            path={`${path}.limit`}
            quantity={place.limit}
            dimension="mass"
            bound="ratedMass"
            onCommit={(quantity) =>
              store.act(words.limitOf(place.name), (document) =>
                writeFigure(document, `${path}.limit`, quantity),
              )
            }
          />
          {place.limit !== undefined && (
            <ChoiceField
              label={words.counts}
              path={`${path}.limitCounts`}
              value={place.limitCounts ?? 'all on it'}
              choices={words.countsWhat}
              onCommit={(counts) =>
                store.act(words.limitOf(place.name), (document) => [
                  write(document, ['machine', 'places', id, 'limitCounts'], counts),
                ])
              }
            />
          )}
          <ChoiceField
            label={words.standsOn}
            path={`${path}.carriedBy`}
            value={place.carriedBy ?? ''}
            choices={[{ value: '', word: words.theMachine }, ...carriers(job, id)]}
            onCommit={(carrier) =>
              store.act(words.standing(place.name), (document) => [
                write(document, ['machine', 'places', id, 'carriedBy'], carrier === '' ? undefined : carrier),
              ])
            }
          />
        </div>
      </details>
    </section>
  );
}

/** Places that this one can stand on: all that do not stand on it themselves. */
function carriers(
  job: JobDocument,
  id: string,
): readonly { readonly value: string; readonly word: string }[] {
  const { places } = job.machine;
  const standsOnIt = (each: string, steps = 0): boolean => {
    const carrier = places[each]?.carriedBy;
    return each === id || (carrier !== undefined && steps < 200 && standsOnIt(carrier, steps + 1));
  };
  return placesInOrder(job)
    .filter(([each]) => !standsOnIt(each))
    .map(([value, { name }]) => ({ value, word: name }));
}
