import type { JobDocument } from '@sagwright/records/schema';
import type { Quantity } from '@sagwright/records/schema/quantity';
import { collarFault, type FirstEntries, firstFigures, firstNames } from '@sagwright/workbench/first/entries';
import { firstJob } from '@sagwright/workbench/first/firstJob';
import { usualSaid } from '@sagwright/workbench/first/usual';
import { collarFaults, firstEntries } from '@sagwright/workbench/words/english/first';
import { useState } from 'react';
import { choicesOf } from '../fields/choicesOf.ts';
import { QuantityField } from '../fields/QuantityField.tsx';
import { sentence } from '../words/fields.ts';
import { first as words } from '../words/first.ts';
import { ChoiceList } from './ChoiceList.tsx';
import { SheetFrame } from './SheetFrame.tsx';
import './sheetHere.css';

interface FirstPlanProps {
  readonly onMade: (job: JobDocument) => void;
  readonly onClose: () => void;
}

/** What was typed so far; null: nothing there yet, or on purpose. */
type FirstTyped = {
  readonly [N in keyof FirstEntries]: FirstEntries[N] | (N extends 'shocks' ? never : null);
};

const NOTHING: FirstTyped = {
  rider: null,
  passenger: null,
  behind: null,
  rear: null,
  shocks: 2,
  rate: null,
  collarNow: null,
  collarMost: null,
};

/** The three-minute way in: eight entries, then a first plan with a wide ±. */
export default function FirstPlan({ onMade, onClose }: FirstPlanProps) {
  const [typed, setTyped] = useState(NOTHING);
  const missing = missingIn(typed);
  const fault = faultIn(typed);
  const entries = missing.length === 0 && fault === null ? entriesOf(typed) : null;
  return (
    <div className="first-plan">
      <SheetFrame title={words.title} note={words.note} onClose={onClose}>
        <div className="sheet-fields">
          {firstNames.map((name, i) => (
            <Entry key={name} name={name} number={i + 1} typed={typed} onTyped={setTyped} />
          ))}
        </div>
        <p>{words.usual(usualSaid(typed.shocks, typed.collarMost !== null))}</p>
        <div aria-live="polite">
          {fault !== null && <p className="stand-line-message">{collarFaults[fault]}</p>}
          {missing.length > 0 && <p>{words.missing(missing.map((name) => firstEntries[name].name))}</p>}
        </div>
        <button
          type="button"
          className="key sheet-do"
          data-do
          disabled={entries === null}
          onClick={() => entries !== null && onMade(firstJob(entries, words.job))}
        >
          {words.make}
        </button>
      </SheetFrame>
    </div>
  );
}

interface EntryProps {
  readonly name: keyof FirstEntries;
  readonly number: number;
  readonly typed: FirstTyped;
  readonly onTyped: (typed: FirstTyped) => void;
}

function Entry({ name, number, typed, onTyped }: EntryProps) {
  const { ask, without } = firstEntries[name];
  const label = words.numbered(number, ask);
  if (name === 'shocks') {
    return (
      <ChoiceList
        label={label}
        chosen={String(typed.shocks)}
        choices={choicesOf(words.counts)}
        onChoose={(count) => onTyped({ ...typed, shocks: count === '1' ? 1 : 2 })}
      />
    );
  }
  const { dimension, bound, reading } = firstFigures[name];
  return (
    <QuantityField
      label={label}
      path={`first.${name}`}
      quantity={typed[name] ?? undefined}
      dimension={dimension}
      bound={bound}
      reading={reading}
      {...(without !== null && { empty: `${sentence(without)}.` })}
      onCommit={(quantity: Quantity | null) => onTyped({ ...typed, [name]: quantity })}
    />
  );
}

/** What a plan cannot do without, in the order of the page; of a collar that was read, its other reading too. */
function missingIn(typed: FirstTyped): readonly (keyof FirstEntries)[] {
  const isHalf = (typed.collarNow === null) !== (typed.collarMost === null);
  return firstNames.filter((name) => {
    const isOther = isHalf && (name === 'collarNow' || name === 'collarMost');
    return typed[name] === null && (isOther || firstEntries[name].without === null);
  });
}

function faultIn({ collarNow, collarMost }: FirstTyped) {
  return collarNow === null || collarMost === null ? null : collarFault(collarNow, collarMost);
}

function entriesOf(typed: FirstTyped): FirstEntries | null {
  const { rider, rear, rate } = typed;
  if (rider === null || rear === null || rate === null) return null;
  return { ...typed, rider, rear, rate };
}
