import { attitudeAt } from '@sagwright/model/attitude/attitude';
import { FRONT_TRAVEL, gradientAt, REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import { GRAVITY } from '@sagwright/model/statics/machine';
import type { Prepared } from '@sagwright/model/statics/prepared';
import { formatFigure, type ShownDimension } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { readAt } from '../why/standing.ts';
import { type SetUpShown, standingShown } from '../why/standingShown.ts';
import { words } from '../words/catalogue.ts';
import { loadName } from '../words/names.ts';
import { type WhyWords, whyInputWords } from '../words/why.ts';

/** A figure of how a load (null: the machine alone) stands in a set-up, as the page shows it. */
export interface StandQuestion {
  readonly figure: StandFigure;
  readonly load: string | null;
  readonly setUp: SetUpShown;
}

export type StandFigure =
  | 'rear travel'
  | 'front travel'
  | 'rear load'
  | 'front load'
  | 'whole load'
  | 'pitch'
  | 'rake'
  | 'trail'
  | 'wheelbase'
  | 'seat height';

/** Opens a figure of a stand up: value, equation, source, what its ± is made of; null where the machine does not rest so. */
export function whyStand(planned: JobPlan, question: StandQuestion, units: Units): WhyWords | null {
  const { load, setUp } = question;
  const { dimension, end, say, read } = figures[question.figure];
  const standing = standingShown(planned, load, setUp);
  if (standing === null) return null;
  const { value, contributions } = readAt(standing, read);
  const name = load === null ? null : loadName(planned.job, load);
  return {
    ...say,
    place: words.standPlace(end, name, setUp),
    value: formatFigure(value, dimension, units),
    inputs: whyInputWords(planned, contributions, dimension, units),
  };
}

interface FigureEntry {
  readonly dimension: ShownDimension;
  readonly end: 'rear' | 'front' | null;
  readonly say: Pick<WhyWords, 'title' | 'equation' | 'where' | 'source'>;
  readonly read: (prepared: Prepared, state: Float64Array) => number;
}

const figures: { readonly [F in StandFigure]: FigureEntry } = {
  'rear travel': travel('rear', REAR_TRAVEL),
  'front travel': travel('front', FRONT_TRAVEL),
  'rear load': load('rear', (rear) => rear),
  'front load': load('front', (_rear, front) => front),
  'whole load': load(null, (rear, front) => rear + front),
  pitch: attitude('angle', words.why.pitch, 'pitch'),
  rake: attitude('angle', words.why.rake, 'rake'),
  trail: attitude('length', words.why.trail, 'groundTrail'),
  wheelbase: attitude('length', words.why.wheelbase, 'wheelbase'),
  'seat height': attitude('length', words.why['seat-height'], 'seatHeight'),
};

function travel(end: 'rear' | 'front', place: number): FigureEntry {
  return { dimension: 'length', end, say: words.standWhy.travel, read: (_prepared, state) => state[place]! };
}

function load(end: 'rear' | 'front' | null, of: (rear: number, front: number) => number): FigureEntry {
  return {
    dimension: 'mass',
    end,
    say: end === null ? words.standWhy.whole : words.standWhy['wheel-load'],
    read: (prepared, state) => {
      gradientAt(prepared, state, 0);
      const { rear, front } = prepared.gradient;
      return of(rear.wheelLoad, front.wheelLoad) / GRAVITY;
    },
  };
}

/** A part of the attitude; the page only asks for those that are known, so that none is read as 0. */
function attitude(
  dimension: ShownDimension,
  say: FigureEntry['say'],
  part: 'pitch' | 'rake' | 'groundTrail' | 'wheelbase' | 'seatHeight',
): FigureEntry {
  return { dimension, end: null, say, read: (prepared, state) => attitudeAt(prepared, state)[part] ?? 0 };
}
