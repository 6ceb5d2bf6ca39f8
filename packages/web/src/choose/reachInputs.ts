import type { EndView, LaneView, LoadView, SpringView } from '@sagwright/workbench/page/shapes';
import { type ReachInput, type ReachLane, reachDomain } from '../drawings/reach/reachInput.ts';
import { choose as words } from '../words/choose.ts';
import { loads as loadWords } from '../words/machine.ts';

/** The reach line of every spring of an end, all on one scale; empty where the end has no adjuster to reach with. */
export function reachInputs(end: EndView, loads: readonly LoadView[]): ReadonlyMap<string, ReachInput> {
  const { adjuster } = end;
  if (adjuster === null) return new Map();
  const collar = { fromMm: 0, toMm: adjuster.mostMm };
  const rows = end.springs.map((spring) => ({
    spring: `${spring.name}, ${spring.rate.value} ${spring.rate.unit}`,
    collar,
    lanes: spring.lanes.map((lane) => reachLane(lane, loads)),
  }));
  const domain = reachDomain(rows);
  return new Map(end.springs.map((spring, i) => [spring.id, { ...rows[i]!, domain }]));
}

function reachLane(lane: LaneView, loads: readonly LoadView[]): ReachLane {
  const load = loads.find((each) => each.id === lane.load);
  const base = { id: lane.load, letter: lane.letter, name: loadWords.spoken(lane.letter, load?.name ?? '') };
  if (lane.kind === 'words') {
    return { ...base, kind: load?.refused === true ? 'refused' : 'not planned', label: lane.words };
  }
  return {
    ...base,
    kind: 'planned',
    verdict: verdicts[lane.kind],
    fromMm: lane.fromMm,
    toMm: lane.toMm,
    fromPlusMinusMm: lane.plusMinusMm,
    toPlusMinusMm: lane.plusMinusMm,
    label: lane.words,
    words: lane.interval,
    plusMinusWords: lane.plusMinus,
  };
}

const verdicts = {
  'in reach': 'in reach',
  'at the edge': 'only at the edge',
  'between steps': 'only at the edge',
  past: 'past the end',
} as const;

/** The line under a spring's rate: where it is and what is special about it. */
export function placeWords(spring: SpringView): string {
  const parts = [
    spring.fitted ? words.fitted : (spring.where ?? ''),
    spring.atHand || spring.fitted ? '' : words.notAtHand,
  ];
  return parts.filter((part) => part !== '').join(', ');
}
