import type { Points } from '@sagwright/records/schema/machine';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { type ListedLength, tapeList } from '@sagwright/workbench/result/tapeList';
import { useState } from 'react';
import { newId } from '../../app/newId.ts';
import { useTable } from '../../app/useJob.ts';
import { TapeSketch } from '../../drawings/rear/TapeSketch.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { type Edit, write } from '../../job/edits.ts';
import { nextOrder } from '../../job/nextOrder.ts';
import { struts } from '../../words/figures.ts';
import { tape as words } from '../../words/tape.ts';
import { lengthName } from './lengthName.ts';

const TAPE = ['machine', 'rear', 'travel', 'tape'];

/** Which lengths give the hard points, one at a time: where it is taken, and its figure. */
export default function TapeGuide({ travel }: { readonly travel: Points }) {
  const { store } = useTable();
  const { listed } = tapeList(travel);
  const [wanted, goTo] = useState(() => Math.max(0, nextOf(listed, -1)));
  const shown = listed[Math.min(wanted, listed.length - 1)]!;
  const tape: Readonly<Record<string, PointLength>> = travel.tape ?? {};
  const [id] = shown.taken;
  const name = lengthName(shown.wanted);
  const left = listed.filter(({ taken }) => taken.length === 0).length;
  const take = (quantity: Quantity | null): void => {
    store.act(name, (document) => {
      if (quantity === null) return takenBack(document, id, tape);
      if (id !== undefined) return [write(document, [...TAPE, id, 'length'], quantity)];
      const length = { ...shown.wanted, order: nextOrder(tape), length: quantity };
      return [write(document, [...TAPE, newId('length')], length)];
    });
    if (quantity !== null && id === undefined) goTo(nextOf(listed, wanted));
  };
  return (
    <section className="sheet-part tape-guide">
      <h3>{words.title}</h3>
      <details>
        <summary>{words.how}</summary>
        <ul>
          {words.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ul>
      </details>
      <TapeSketch
        kind={travel.kind}
        length={shown.wanted}
        points={(part) => struts.tape.parts[part as keyof typeof struts.tape.parts]}
        spoken={words.spoken(name)}
      />
      <p>{words.left(left, listed.length)}</p>
      <div className="tape-step">
        <button type="button" className="key" disabled={wanted === 0} onClick={() => goTo(wanted - 1)}>
          {words.before}
        </button>
        <QuantityField
          label={words.numbered(wanted + 1, listed.length, name)}
          path={`tape-guide.${wanted}`}
          quantity={id === undefined ? undefined : tape[id]!.length}
          dimension="length"
          bound={shown.wanted.kind === 'between' ? 'tapedLength' : 'besideAxle'}
          reading="tape"
          empty={words.toTake}
          onCommit={take}
        />
        <button
          type="button"
          className="key"
          disabled={wanted === listed.length - 1}
          onClick={() => goTo(wanted + 1)}
        >
          {words.after}
        </button>
      </div>
    </section>
  );
}

/** The next length that nobody has taken, after one of the list and round to its beginning; that one itself where all are. */
function nextOf(listed: readonly ListedLength[], from: number): number {
  const places = listed.map((_, i) => (from + 1 + i) % listed.length);
  return places.find((place) => place !== from && listed[place]!.taken.length === 0) ?? from;
}

/** A length taken back; the list goes with its last one. */
function takenBack(
  document: unknown,
  id: string | undefined,
  tape: Readonly<Record<string, PointLength>>,
): readonly Edit[] {
  if (id === undefined) return [];
  return [write(document, Object.keys(tape).length === 1 ? TAPE : [...TAPE, id], undefined)];
}
