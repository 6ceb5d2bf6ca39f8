import type { JobDocument } from '@sagwright/records/schema';
import { useState } from 'react';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { TextField } from '../fields/TextField.tsx';
import { write } from '../job/edits.ts';
import { writeFigure } from '../job/figures.ts';
import { moveTo, takeOff } from '../job/loads.ts';
import { newPlace, placesInOrder } from '../job/places.ts';
import { place as placeWords, thing as words } from '../words/machine.ts';
import { NewPlace } from './NewPlace.tsx';
import { SteppedFigure } from './SteppedFigure.tsx';

interface ThingFieldsProps {
  readonly load: string;
  readonly aboardId: string;
}

const elsewhere = 'a new place';

/** Mass and place of a thing aboard. */
export function ThingFields({ load, aboardId }: ThingFieldsProps) {
  const { state, store, view } = useTable();
  const [placing, setPlacing] = useState(false);
  const job = jobOf(state);
  const { aboard, thing } = aboardIn(job, load, aboardId);
  if (aboard === undefined || thing === undefined || view === null) return null;
  const path = `things.${aboard.thing}`;
  const places = placesInOrder(job).map(([value, { name }]) => ({ value, word: name }));
  return (
    <div className="sheet-fields">
      <SteppedFigure
        label={words.mass}
        path={`${path}.mass`}
        quantity={thing.mass}
        dimension="mass"
        bound="thingMass"
        reading={thing.kind}
        step={thing.kind === 'person' ? 1 : 0.5}
        assumed={undefined}
        onCommit={(mass) =>
          mass !== null &&
          store.act(words.massOf(thing.name), (document) => writeFigure(document, `${path}.mass`, mass))
        }
      />
      <ChoiceField
        label={words.place}
        path={`loadCases.${load}.aboard.${aboardId}.place`}
        value={placing ? elsewhere : aboard.place}
        choices={[...places, { value: elsewhere, word: placeWords.another }]}
        onCommit={(place) => {
          setPlacing(place === elsewhere);
          if (place !== elsewhere) {
            store.act(words.moved(thing.name), () => moveTo(job, load, aboardId, place));
          }
        }}
      />
      {placing && (
        <NewPlace
          view={view}
          doWord={words.moveThere}
          onMake={(place) => {
            const id = newId('place');
            store.act(words.moved(thing.name), () => [
              ...newPlace(job, id, place),
              ...moveTo(job, load, aboardId, id),
            ]);
            setPlacing(false);
          }}
        />
      )}
    </div>
  );
}

/** The name of a thing, and the key that takes it off this load. */
export function ThingKeys({ load, aboardId, onGone }: ThingFieldsProps & { readonly onGone: () => void }) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const { aboard, thing } = aboardIn(job, load, aboardId);
  if (aboard === undefined || thing === undefined) return null;
  const path = `things.${aboard.thing}`;
  return (
    <div className="sheet-fields">
      <TextField
        label={words.name}
        path={`${path}.name`}
        value={thing.name}
        most={120}
        onCommit={(name) =>
          name !== '' &&
          store.act(words.renamed(thing.name), (document) => [
            write(document, ['things', aboard.thing, 'name'], name),
          ])
        }
      />
      <button
        type="button"
        className="key sheet-take-off"
        onClick={() => {
          store.act(words.tookOff(thing.name), () => takeOff(job, load, aboardId));
          onGone();
        }}
      >
        {words.takeOff}
      </button>
    </div>
  );
}

function aboardIn(job: JobDocument, load: string, id: string) {
  const loadCase = job.loadCases[load];
  const aboard = loadCase !== undefined && 'aboard' in loadCase ? loadCase.aboard[id] : undefined;
  return { aboard, thing: aboard === undefined ? undefined : job.things[aboard.thing] };
}
