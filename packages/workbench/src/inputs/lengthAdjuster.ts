import {
  type LengthAdjusterSI,
  longerLeft,
  shorterLeft,
  type ThreadLeft,
} from '@sagwright/model/limits/threadLeft';
import type { Figure } from '@sagwright/model/plan/answer';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { LengthAdjuster } from '@sagwright/records/schema/struts';
import type { ChosenLength, LengthAdjusterDocument, LengthLeft } from '../shock/document.ts';
import type { Desk } from './desk.ts';
import { ownFigure } from './ownFigure.ts';
import type { Take } from './take.ts';

const PATH = 'machine.rear.shock.lengthAdjuster';

/** What the length adjuster leaves both ways, and what a chosen length takes of it; null where there is none. */
export function lengthAdjusterFigures(desk: Desk): LengthAdjusterDocument | null {
  const typed = desk.job.machine.rear.shock.lengthAdjuster;
  if (typed === undefined) return null;
  return {
    stands: ownFigure(desk, (at) => adjusterSI(at.take, typed).change)!,
    longer: leftOf(desk, (at) => longerLeft(adjusterSI(at.take, typed))),
    shorter: leftOf(desk, (at) => shorterLeft(adjusterSI(at.take, typed))),
    chosen: chosenLength(desk, typed),
  };
}

export function adjusterSI(take: Take, typed: LengthAdjuster): LengthAdjusterSI {
  const { change, least, most, lead, thread, mark } = typed;
  return {
    change: take.known(`${PATH}.change`, change, 'collar'),
    least: least === undefined ? null : take.known(`${PATH}.least`, least, 'collar'),
    most: most === undefined ? null : take.known(`${PATH}.most`, most, 'collar'),
    lead: lead === undefined ? null : take.known(`${PATH}.lead`, lead, 'lead'),
    thread:
      thread === undefined
        ? null
        : {
            engaged: take.known(`${PATH}.thread.engaged`, thread.engaged, 'threadEngaged'),
            needed:
              (thread.atLeast ?? ONE_DIAMETER) *
              take.known(`${PATH}.thread.diameter`, thread.diameter, 'threadDiameter'),
          },
    toMark: mark === undefined ? null : take.known(`${PATH}.mark.left`, mark.left, 'collar'),
  };
}

/** What must stay engaged where nobody said, in diameters of the thread: common practice, no source. */
export const ONE_DIAMETER = 1;

function leftOf(desk: Desk, left: (desk: Desk) => ThreadLeft | null): LengthLeft | null {
  const found = left(desk);
  if (found === null) return null;
  return {
    length: ownFigure(desk, (at) => left(at)!.length)!,
    turns: ownFigure(desk, (at) => left(at)!.turns),
    by: found.by,
  };
}

function chosenLength(desk: Desk, typed: LengthAdjuster): ChosenLength | null {
  const choice = desk.job.choice?.shockLength;
  if (choice === undefined) return null;
  const longer = (at: Desk): number => at.take.known('choice.shockLength', choice, 'collar');
  const left = ownFigure(desk, ({ take }) => leftOfChosen(take, typed, choice));
  return {
    change: ownFigure(desk, longer)!,
    turns: ownFigure(desk, (at) => {
      const { lead } = adjusterSI(at.take, typed);
      return lead === null ? null : longer(at) / lead;
    }),
    left,
    verdict: verdictOf(left),
  };
}

/** What the adjuster leaves the way that is chosen, less the chosen change; null where nothing tells how far it goes. */
export function leftOfChosen(take: Take, typed: LengthAdjuster, choice: Quantity): number | null {
  const change = take.known('choice.shockLength', choice, 'collar');
  const adjuster = adjusterSI(take, typed);
  const room = change >= 0 ? longerLeft(adjuster) : shorterLeft(adjuster);
  return room === null ? null : room.length - Math.abs(change);
}

function verdictOf(left: Figure | null): ChosenLength['verdict'] {
  if (left === null) return 'not checked';
  if (left.value < 0) return 'failed';
  return left.plusMinus === null || left.value < left.plusMinus ? 'within its ±' : 'passed';
}
