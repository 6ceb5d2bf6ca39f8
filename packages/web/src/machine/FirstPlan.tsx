import type { JobDocument } from '@sagwright/records/schema';
import { siOf } from '@sagwright/records/schema/quantity';
import { useState } from 'react';
import { type FirstEntries, firstJob } from '../job/firstJob.ts';
import { firstWords, first as words } from '../words/first.ts';
import { ChoiceList } from './ChoiceList.tsx';
import { FirstField, type FirstTyped } from './FirstField.tsx';
import { SheetFrame } from './SheetFrame.tsx';
import './sheetHere.css';

interface FirstPlanProps {
  readonly onMade: (job: JobDocument) => void;
  readonly onClose: () => void;
}

/** The three-minute way in: eight entries, then a first plan with a wide ±. */
export default function FirstPlan({ onMade, onClose }: FirstPlanProps) {
  const [typed, setTyped] = useState<FirstTyped>({ shocks: 2 });
  const missing = missingIn(typed);
  const beyond = isBeyond(typed);
  const field = { typed, onTyped: setTyped };
  const make = (): void => {
    const entries = entriesOf(typed);
    if (entries !== null) onMade(firstJob(entries, firstWords(entries.ratio === null)));
  };
  return (
    <div className="first-plan">
      <SheetFrame title={words.title} note={words.note} onClose={onClose}>
        <div className="sheet-fields">
          <FirstField {...field} name="rider" label={words.rider} bound="thingMass" reading="person" />
          <FirstField
            {...field}
            name="passenger"
            label={words.passenger}
            empty={words.nobody}
            bound="thingMass"
            reading="person"
          />
          <FirstField
            {...field}
            name="behind"
            label={words.behind}
            empty={words.nothing}
            bound="thingMass"
            reading="item"
          />
          <FirstField {...field} name="rear" label={words.rear} bound="massOnWheel" reading="scale" />
          <FirstField {...field} name="front" label={words.front} bound="massOnWheel" reading="scale" />
          <FirstField {...field} name="rate" label={words.rate} bound="springRate" reading="springRate" />
          <ChoiceList
            label={words.shocks}
            chosen={String(typed.shocks)}
            choices={Object.entries(words.counts).map(([value, word]) => ({ value, word }))}
            onChoose={(count) => setTyped({ ...typed, shocks: count === '1' ? 1 : 2 })}
          />
          <FirstField {...field} name="ratio" label={words.ratio} bound="leverage" reading="ratio" />
          <FirstField
            {...field}
            name="collarNow"
            label={words.collarNow}
            bound="collarReading"
            reading="collar"
          />
          <FirstField
            {...field}
            name="collarMost"
            label={words.collarMost}
            bound="collarReading"
            reading="collar"
          />
        </div>
        <div aria-live="polite">
          {beyond && <p className="stand-line-message">{words.collarBeyond}</p>}
          {missing.length > 0 && <p>{words.missing(missing.map((name) => words.names[name]))}</p>}
        </div>
        <button
          type="button"
          className="key sheet-do"
          data-do
          disabled={missing.length > 0 || beyond}
          onClick={make}
        >
          {words.make}
        </button>
      </SheetFrame>
    </div>
  );
}

/** What a plan cannot do without, in the order of the page. A single shock's ratio too: its linkage may be anything. */
function missingIn(typed: FirstTyped): readonly (keyof typeof words.names)[] {
  const needed = ['rider', 'rear', 'front', 'rate', 'ratio', 'collarNow', 'collarMost'] as const;
  return needed.filter((name) => typed[name] === undefined && !(name === 'ratio' && typed.shocks === 2));
}

function isBeyond({ collarNow, collarMost }: FirstTyped): boolean {
  return collarNow !== undefined && collarMost !== undefined && siOf(collarNow) > siOf(collarMost);
}

/** All eight, with what was left out on purpose; null while one is missing. */
function entriesOf(typed: FirstTyped): FirstEntries | null {
  const { rider, front, rear, shocks, rate, collarNow, collarMost } = typed;
  if (rider === undefined || front === undefined || rear === undefined || shocks === undefined) return null;
  if (rate === undefined || collarNow === undefined || collarMost === undefined) return null;
  const { passenger = null, behind = null, ratio = null } = typed;
  return { rider, passenger, behind, front, rear, shocks, rate, ratio, collarNow, collarMost };
}
