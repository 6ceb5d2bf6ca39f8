import type { LoadView } from '@sagwright/workbench/page/shapes';
import type { LadderInput } from '../drawings/ladder/ladderInput.ts';
import { laneTargets } from '../drawings/ladder/laneTargets.ts';
import { TravelLadder } from '../drawings/ladder/TravelLadder.tsx';
import { type LadderSize, travelLadder } from '../drawings/ladder/travelLadder.ts';
import { ladder as words } from '../words/machine.ts';
import { ALONE, type SetUpShown } from './drawingInputs.ts';
import type { OpenSheet } from './sheets.ts';

interface LadderKeysProps {
  readonly input: LadderInput;
  readonly size: LadderSize;
  /** Over how many px a lane answers at least. */
  readonly target: number;
  readonly load: LoadView;
  readonly shown: SetUpShown;
  readonly onChoose: (load: string | null) => void;
  readonly onSheet: OpenSheet;
}

/** A ladder whose lanes are keys: another lane is looked at, the chosen one opens where its wheel rests. */
export function LadderKeys({ input, size, target, load, shown, onChoose, onSheet }: LadderKeysProps) {
  const { lanes, width, height } = travelLadder(input, size);
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
      <TravelLadder input={input} size={size} />
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
}
