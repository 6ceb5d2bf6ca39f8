import type { Quantity } from '@sagwright/records/schema/quantity';
import type { StanceView } from '@sagwright/workbench/page/stanceView';
import { jobOf, useTable } from '../../app/useJob.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { SizeField } from '../../fields/SizeField.tsx';
import { choose } from '../../job/choice.ts';
import { write } from '../../job/edits.ts';
import { stance as words } from '../../words/stance.ts';

/** Clamps are only a fork's. */
const ALL_LENGTHS = ['shockLength', 'clampHeight'] as const;
const ends = ['rear', 'front'] as const;

/** Another shock length, clamp height or tyre: what is planned then stands so. */
export function OtherwisePart({ view }: { readonly view: StanceView }) {
  const { state, store } = useTable();
  const job = jobOf(state);
  const { choice, machine } = job;
  const set = (part: keyof NonNullable<typeof choice>, label: string, value: unknown): void =>
    store.act(label, () => choose(jobOf(store.state()), part, value));
  const lengths = machine.front.travel === undefined ? ALL_LENGTHS : ALL_LENGTHS.slice(0, 1);
  const isOtherwise = Object.keys(choice ?? {}).some((part) => part !== 'rear' && part !== 'front');
  const asFound = (): void =>
    store.act(words.didAsFound, (document) =>
      [...ALL_LENGTHS, 'rearTyre', 'frontTyre'].map((part) => write(document, ['choice', part], undefined)),
    );
  const known = ends.filter((end) => machine[end].tyre?.size ?? machine[end].tyre?.radius);
  return (
    <section className="sheet-part">
      <h3>{words.otherwise}</h3>
      <p>{words.otherwiseNote}</p>
      <div className="sheet-fields">
        {lengths.map((part) => (
          <QuantityField
            key={part}
            label={words.fields[part]}
            path={`choice.${part}`}
            quantity={choice?.[part] as Quantity | undefined}
            dimension="length"
            bound="lengthChange"
            reading="collar"
            empty={words.head.asFound}
            onCommit={(quantity) => set(part, words.fields[part], quantity)}
          />
        ))}
        {known.map((end) => (
          <SizeField
            key={end}
            label={words.fields[`${end}Tyre`]}
            path={`choice.${end}Tyre`}
            value={choice?.[`${end}Tyre`] ?? ''}
            onCommit={(size) => set(`${end}Tyre`, words.fields[`${end}Tyre`], size === '' ? null : size)}
          />
        ))}
      </div>
      {ends
        .filter((end) => !known.includes(end))
        .map((end) => (
          <p key={end}>{words.noTyre(end)}</p>
        ))}
      {view.tyres.map((text) => (
        <p key={text}>{text}</p>
      ))}
      {isOtherwise && (
        <div className="sheet-keys">
          <button type="button" className="key" onClick={asFound}>
            {words.asFound}
          </button>
        </div>
      )}
    </section>
  );
}
