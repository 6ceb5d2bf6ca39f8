import type { LoadView, PageView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { memo, useState } from 'react';
import { useSame } from '../app/useSame.ts';
import { useWidth } from '../app/useWidth.ts';
import { AsTable } from '../drawings/AsTable.tsx';
import { LadderLegend } from '../drawings/ladder/LadderLegend.tsx';
import { ladderLanes, ladderScale, travelLadderTable } from '../drawings/ladder/travelLadder.ts';
import { sideViewTable } from '../drawings/side/sideView.ts';
import { ladder as words } from '../words/machine.ts';
import { ladderInput, sideViewInput } from './drawingInputs.ts';
import { LadderKeys } from './LadderKeys.tsx';
import type { OpenSheet } from './sheets.ts';
import { ThingList } from './ThingList.tsx';
import { useGhosts } from './useGhosts.ts';
import { useMedia } from './useMedia.ts';
import './ladders.css';

interface LaddersProps {
  readonly view: PageView;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly ladder: LadderShown;
  readonly onLadder: (ladder: LadderShown) => void;
  readonly onChoose: (load: string | null) => void;
  readonly onSheet: OpenSheet;
}

/** What stands alone where there is room for one: a ladder, or the things aboard. */
export type LadderShown = 'rear' | 'front' | 'things';

/** What a lane answers over, px: a finger in a glove, 12 mm; a mouse. */
const FINGER = 62;
const MOUSE = 32;
/** Between two ladders, px. */
const APART = 12;
/** Below this width one ladder stands alone, and keys choose which. */
const BOTH_FROM = 560;

/** Where each end rests under each load, both on one scale; on a phone one of them, or the things aboard. */
export const Ladders = memo(function Ladders(props: LaddersProps) {
  const { view, load, shown, ladder, onLadder, onChoose, onSheet } = props;
  const [ref, width] = useWidth<HTMLDivElement>();
  const [first, setFirst] = useState(0);
  const input = (name: 'rear' | 'front') =>
    ladderInput(name, view[name], view.loads, shown, load.id, first, view.lengthUnit);
  const inputs = useSame(useGhosts([input('rear'), input('front')]));
  const pxPerMm = ladderScale(inputs, Math.max(250, Math.min(420, 0.26 * window.innerHeight)));
  const both = width >= BOTH_FROM;
  const painted = both ? inputs : inputs.filter((each) => each.end === ladder);
  const ladderWidth = both ? Math.floor((width - APART) / 2) : width;
  const target = useMedia('(min-width: 1200px) and (pointer: fine)') ? MOUSE : FINGER;
  const lanes = ladderLanes(inputs, ladderWidth, target);
  const beyond = view.loads.length - lanes;
  /** One load less than is seen at once: the chosen one may stand in the place of another. */
  const step = Math.max(1, lanes - 2);
  return (
    <section className="ladders" aria-label={words.label}>
      {!both && <LadderSwitch shown={ladder} things={load.things.length} onShow={onLadder} />}
      <div className="ladders-pair" ref={ref} style={{ gap: APART }}>
        {width > 0 &&
          painted.map((each) => (
            <LadderKeys
              key={each.end}
              input={each}
              width={ladderWidth}
              pxPerMm={pxPerMm}
              lanes={lanes}
              target={target}
              load={load}
              shown={shown}
              onChoose={onChoose}
              onSheet={onSheet}
            />
          ))}
      </div>
      {!both && ladder === 'things' && <ThingList load={load} onSheet={onSheet} />}
      {(both || ladder !== 'things') && (
        <div className="ladders-foot">
          <LadderLegend
            measured={inputs.some((each) => each.lanes.some(({ measured }) => measured !== null))}
          />
          {beyond > 0 && <LaneSteps first={first} last={beyond} step={step} onFirst={setFirst} />}
        </div>
      )}
      <div className="ladders-tables">
        <AsTable
          of={words.tables.picture}
          table={() => sideViewTable(sideViewInput(view.picture, load, shown, null))}
        />
        {inputs.map((each) => (
          <AsTable key={each.end} of={words.tables[each.end]} table={() => travelLadderTable(each)} />
        ))}
      </div>
    </section>
  );
});

interface LaneStepsProps {
  /** Which load stands first, 0 the first of them; the last place where it can. */
  readonly first: number;
  readonly last: number;
  readonly step: number;
  readonly onFirst: (first: number) => void;
}

/** Keys towards the loads that the ladders have no room for. */
function LaneSteps({ first, last, step, onFirst }: LaneStepsProps) {
  const here = Math.min(first, last);
  return (
    <div className="ladders-more">
      <button
        type="button"
        className="key"
        disabled={here === 0}
        onClick={() => onFirst(Math.max(0, here - step))}
      >
        {words.earlier}
      </button>
      <button
        type="button"
        className="key"
        disabled={here >= last}
        onClick={() => onFirst(Math.min(last, here + step))}
      >
        {words.later}
      </button>
    </div>
  );
}

interface LadderSwitchProps {
  readonly shown: LadderShown;
  readonly things: number;
  readonly onShow: (shown: LadderShown) => void;
}

function LadderSwitch({ shown, things, onShow }: LadderSwitchProps) {
  return (
    <fieldset className="ladders-switch" aria-label={words.which}>
      {(['rear', 'front', 'things'] as const).map((name) => (
        <button key={name} type="button" aria-pressed={name === shown} onClick={() => onShow(name)}>
          {name === 'things' ? words.things(things) : words.end[name]}
        </button>
      ))}
    </fieldset>
  );
}
