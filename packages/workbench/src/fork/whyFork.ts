import { format, formatFigure } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { words } from '../words/catalogue.ts';
import { forkWhy } from '../words/english/fork.ts';
import { loadName } from '../words/names.ts';
import { type WhyWords, whyInputWords } from '../words/why.ts';
import { type ForkForce, type ForkStands, forkStands, openForce } from './fork.ts';

/** A force of the fork as found, at a share of its stroke from 0 to 1. */
export interface ForkQuestion {
  readonly force: ForkForce;
  readonly share: number;
}

/** What each force is called where a figure is asked for by name. */
export const forkFigures = {
  'fork-springs': 'springs',
  'fork-air': 'air',
  'fork-air-quick': 'airQuick',
  'fork-force': 'whole',
} as const satisfies Readonly<Record<string, ForkForce>>;

export type ForkFigure = keyof typeof forkFigures;

export const forkFigureNames = Object.keys(forkFigures) as readonly ForkFigure[];

/** Opens it up: value, equation, source, what its ± is made of; or a sentence that says why it cannot be. */
export function whyFork(planned: JobPlan, { force, share }: ForkQuestion, units: Units): WhyWords | string {
  const stands = forkStands(planned);
  if (stands === null) return `${words.fork.noFork}.`;
  const opened = openForce(stands, force, share);
  if (opened === null) return `${force === 'airQuick' ? words.fork.noAir : words.fork.noRest}.`;
  return {
    ...forkWhy[force],
    place: placeWords(planned, stands, { force, share }, units),
    value: formatFigure(opened.value, 'force', units),
    inputs: whyInputWords(planned, opened.contributions, 'force', units),
  };
}

function placeWords(
  { job }: JobPlan,
  { front, about }: ForkStands,
  { force, share }: ForkQuestion,
  units: Units,
): string {
  return words.fork.place(
    format(share, 'share', units),
    format(share * front.strokeMax, 'length', units),
    force === 'airQuick' && about !== null
      ? words.fork.about(loadName(job, about.quick.loadCase))
      : words.fork.alone,
  );
}
