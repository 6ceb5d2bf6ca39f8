import type { LoadView } from '@sagwright/workbench/page/shapes';
import type { SetUpShown } from '@sagwright/workbench/why/standingShown';
import { memo } from 'react';
import { useSame } from '../app/useSame.ts';
import type { LadderInput } from '../drawings/ladder/ladderInput.ts';
import { laneTargets } from '../drawings/ladder/laneTargets.ts';
import { TravelLadder } from '../drawings/ladder/TravelLadder.tsx';
import { travelLadder } from '../drawings/ladder/travelLadder.ts';
import { ladder as words } from '../words/machine.ts';
import { ALONE } from './drawingInputs.ts';
import type { OpenSheet } from './sheets.ts';

interface LadderKeysProps {
  readonly input: LadderInput;
  readonly width: number;
  readonly pxPerMm: number;
  /** How many lanes stand beside each other at most. */
  readonly lanes: number;
  /** Over how many px a lane answers at least. */
  readonly target: number;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onChoose: (load: string | null) => void;
  readonly onSheet: OpenSheet;
}

/** A ladder whose lanes are keys: another lane is looked at, the chosen one opens where its wheel rests. */
export const LadderKeys = memo(function LadderKeys(props: LadderKeysProps) {
  const { input, width, pxPerMm, target, load, shown, onChoose, onSheet } = props;
  const marks = useSame(travelLadder(input, { width, pxPerMm, lanes: props.lanes }));
  const { lanes, height } = marks;
  const setUp = load.planned === null ? 'asFound' : shown;
  const targets = laneTargets(
    lanes.map(({ column }) => column),
    width,
    target,
  );
  const press = (id: string, chosen: boolean): void => {
    const figure = `${input.end} travel` as const;
    if (chosen) onSheet({ kind: 'why', question: { of: 'stand', asked: { figure, load: load.id, setUp } } });
    else onChoose(id === ALONE ? null : id);
  };
  return (
    <div className="ladder-keys">
      <TravelLadder input={input} marks={marks} />
      <div className="ladder-keys-over" style={{ blockSize: height }}>
        {lanes.map(({ id, chosen, letter }, index) => (
          <button
            key={id}
            type="button"
            style={targets[index]}
            aria-label={(chosen ? words.open : words.choose)(input.end, letter)}
            onClick={() => press(id, chosen)}
          />
        ))}
      </div>
    </div>
  );
});
