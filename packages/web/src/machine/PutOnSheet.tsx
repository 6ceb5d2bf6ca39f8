import type { JobDocument } from '@sagwright/records/schema';
import type { Place } from '@sagwright/records/schema/machine';
import { useState } from 'react';
import { newId } from '../app/newId.ts';
import { jobOf, useTable } from '../app/useJob.ts';
import type { Edit } from '../job/edits.ts';
import { newThing, putOn } from '../job/loads.ts';
import { newPlace, placesInOrder } from '../job/places.ts';
import { place as placeWords, thing as words } from '../words/machine.ts';
import { ChoiceList } from './ChoiceList.tsx';
import { NewPlace } from './NewPlace.tsx';
import { NewThing, type ThingMade } from './NewThing.tsx';
import { placeFor, thingsAshore } from './placeFor.ts';
import { SheetFrame } from './SheetFrame.tsx';
import type { SheetProps } from './sheets.ts';

const NEW = 'new';

/** Puts somebody or something on the load: who or what, and where. What lay somewhere before is offered that place. */
export default function PutOnSheet({ view, load, onSheet }: SheetProps) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const ashore = thingsAshore(job, load.id);
  const [who, setWho] = useState<string>(ashore.length === 0 ? NEW : '');
  const [made, setMade] = useState<ThingMade | null>(null);
  const [picked, setPlace] = useState<string | null>(null);
  const kind = who === NEW ? made?.kind : job.things[who]?.kind;
  const place = picked ?? (kind === undefined ? '' : placeFor(job, load.id, who, kind));
  const ready = who !== '' && (who !== NEW || made !== null);
  if (load.id === null) return null;
  const { id, letter, name } = load;

  function putHere(at: string, placing: readonly Edit[]): void {
    const thing = who === NEW ? newId('thing') : who;
    const aboard = newId('aboard');
    store.act(words.didPutOn(made?.name ?? job.things[thing]?.name ?? ''), () => [
      ...(who === NEW && made !== null ? newThing(job, thing, made.name, made.kind, made.mass) : []),
      ...placing,
      ...putOn(job, id, aboard, thing, at),
    ]);
    onSheet({ kind: 'thing', id: aboard });
  }

  function putAtNew(place: Pick<Place, 'name' | 'kind' | 'at'>): void {
    const at = newId('place');
    putHere(at, newPlace(job, at, place));
  }

  return (
    <SheetFrame title={words.putOn} note={words.onLoad(letter ?? '', name)} onClose={() => onSheet(null)}>
      <ChoiceList
        label={words.whoOrWhat}
        chosen={who}
        choices={[
          ...ashore.map((each) => ({ value: each, word: job.things[each]!.name, more: massOf(job, each) })),
          { value: NEW, word: words.newThing },
        ]}
        onChoose={(each) => {
          setWho(each);
          setMade(null);
          setPlace(null);
        }}
      />
      {who === NEW && <NewThing made={made} onMade={setMade} />}
      {ready && (
        <ChoiceList
          label={words.where}
          chosen={place}
          choices={[
            ...placesInOrder(job).map(([value, each]) => ({ value, word: each.name })),
            { value: NEW, word: placeWords.another },
          ]}
          onChoose={setPlace}
        />
      )}
      {ready && place === NEW && <NewPlace view={view} doWord={words.doPutOn} onMake={putAtNew} />}
      {ready && place !== NEW && place !== '' && (
        <button type="button" className="key sheet-do" data-do onClick={() => putHere(place, [])}>
          {words.doPutOn}
        </button>
      )}
    </SheetFrame>
  );
}

function massOf(job: JobDocument, thing: string): string {
  const { value, unit } = job.things[thing]!.mass;
  return `${value} ${unit}`;
}
