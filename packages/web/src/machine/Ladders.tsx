import type { PageView } from '@sagwright/workbench/page/shapes';
import { useState } from 'react';
import { Button } from 'react-aria-components/Button';
import { useWidth } from '../app/useWidth.ts';
import { AsTable } from '../drawings/AsTable.tsx';
import { LadderLegend } from '../drawings/ladder/LadderLegend.tsx';
import { TravelLadder } from '../drawings/ladder/TravelLadder.tsx';
import { ladderScale, travelLadderTable } from '../drawings/ladder/travelLadder.ts';
import { ladder as words } from '../words/machine.ts';
import { ladderInput, type SetUpShown } from './drawingInputs.ts';
import './ladders.css';

interface LaddersProps {
  readonly view: PageView;
  readonly shown: SetUpShown;
  readonly chosen: string | null;
}

const LANES = 5;
const HEIGHT = 420;
/** Below this width one ladder stands alone, and keys choose which. */
const BOTH_FROM = 560;

/** Where each end rests under each load, both on one scale. */
export function Ladders({ view, shown, chosen }: LaddersProps) {
  const [ref, width] = useWidth<HTMLDivElement>();
  const [first, setFirst] = useState(0);
  const [end, setEnd] = useState<'rear' | 'front'>('rear');
  const input = (name: 'rear' | 'front') =>
    ladderInput(name, view[name], view.loads, shown, chosen, first, view.lengthUnit);
  const inputs = [input('rear'), input('front')];
  const scale = ladderScale(inputs, HEIGHT);
  const both = width >= BOTH_FROM;
  const painted = both ? inputs : inputs.filter((each) => each.end === end);
  const ladderWidth = both ? Math.floor((width - 24) / 2) : width;
  const beyond = view.loads.length - 1 - LANES;
  return (
    <section className="ladders" aria-label={words.label} ref={ref}>
      {!both && (
        <fieldset className="ladders-ends" aria-label={words.which}>
          {(['rear', 'front'] as const).map((name) => (
            <Button key={name} aria-pressed={name === end} onPress={() => setEnd(name)}>
              {words.end[name]}
            </Button>
          ))}
        </fieldset>
      )}
      <div className="ladders-pair">
        {width > 0 &&
          painted.map((each) => (
            <div key={each.end}>
              <TravelLadder input={each} size={{ width: ladderWidth, pxPerMm: scale }} />
              <AsTable table={travelLadderTable(each)} />
            </div>
          ))}
      </div>
      {beyond > 0 && (
        <div className="ladders-more">
          <Button isDisabled={first === 0} onPress={() => setFirst(first - 1)}>
            {words.earlier}
          </Button>
          <Button isDisabled={first >= beyond} onPress={() => setFirst(first + 1)}>
            {words.later}
          </Button>
        </div>
      )}
      <LadderLegend />
    </section>
  );
}
