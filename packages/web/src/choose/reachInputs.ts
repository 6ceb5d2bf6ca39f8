import type { EndView, LaneView, LoadView } from '@sagwright/workbench/page/shapes';
import type { ReachHeadInput } from '../drawings/reach/reachHead.ts';
import { type ReachInput, type ReachLane, reachDomain } from '../drawings/reach/reachInput.ts';
import { hands as handWords, choose as words } from '../words/choose.ts';
import { loads as loadWords } from '../words/machine.ts';

/** The reach line of every spring of an end, all on one scale; empty where the end has no adjuster to reach with. */
export function reachInputs(end: EndView, loads: readonly LoadView[]): Readonly<Record<string, ReachInput>> {
  const { adjuster } = end;
  if (adjuster === null) return {};
  const collar = { fromMm: 0, toMm: adjuster.mostMm };
  const title = handWords.setting(adjuster.name, adjuster.unit);
  const rows = end.springs.map((spring) => ({
    spring: `${spring.name}, ${spring.rate.value} ${spring.rate.unit}`,
    collar,
    counts: words.counts[adjuster.sets],
    reaches: words.reaches(title, adjuster.fromWords, adjuster.toWords),
    stepsMm: adjuster.stepsMm,
    lanes: spring.lanes.map((lane) => reachLane(lane, loads)),
  }));
  const domain = reachDomain(rows);
  return Object.fromEntries(end.springs.map((spring, i) => [spring.id, { ...rows[i]!, domain }]));
}

/** What stands over all of them, once; null where there is nothing to set. */
export function reachHeadInput(
  { adjuster }: EndView,
  inputs: Readonly<Record<string, ReachInput>>,
): ReachHeadInput | null {
  const [first] = Object.values(inputs);
  if (adjuster === null || first === undefined) return null;
  const { mostMm, fromWords, toWords, stepsMm } = adjuster;
  return {
    domain: first.domain,
    collar: first.collar,
    title: handWords.setting(adjuster.name, adjuster.unit),
    marks:
      stepsMm.length > 0
        ? stepsMm.map((atMm, i) => ({ atMm, words: String(i + 1) }))
        : [
            { atMm: 0, words: fromWords },
            { atMm: mostMm, words: toWords },
          ],
    past: words.past,
  };
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
    words: lane.preload,
    plusMinusWords: lane.plusMinus,
  };
}

const verdicts = {
  'in reach': 'in reach',
  'at the edge': 'only at the edge',
  'between steps': 'between steps',
  past: 'past the end',
} as const;
