import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import type { LoadCaseResult } from '@sagwright/model/plan/answer';
import { format, formatFigure, formatFigureNumber, formatPlainNumber, unitOf } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import { limitNeeds } from '../limits/needs.ts';
import type { JobPlan } from '../path.ts';
import { words } from './catalogue.ts';
import { loadName, placeName } from './names.ts';

/** Why nothing is planned for a load: over a limit, or no way to stand; null where it is planned. */
export function refusalWords(planned: JobPlan, load: LoadCaseResult, units: Units): string | null {
  const name = loadName(planned.job, load.loadCase);
  const say = words.limits;
  const { answer } = load.asFound;
  if (answer.kind === 'tips') return say.tips(name, answer.over);
  if (load.refused) {
    const over = load.limits.filter(({ verdict }) => verdict === 'over');
    return say.refused(
      name,
      words.list(over.map((limit) => overWords(planned, limit, units))),
      fuelWords(planned),
    );
  }
  return answer.kind === 'no rest' ? say.noRest(name) : null;
}

/** Loads that are below a limit by less than their ±. */
export function closeLimitWords(planned: JobPlan, load: LoadCaseResult, units: Units): readonly string[] {
  return load.limits
    .filter(({ verdict }) => verdict === 'within its ±')
    .map((limit) => {
      const found = limitInLoad(planned, load.loadCase, limit, units);
      const left = -(limit.over ?? 0);
      return left > 0
        ? words.limits.withinItsDoubt(found, format(left, 'mass', units))
        : words.limits.exactlyFull(found);
    });
}

/** The known limit that is nearest to being reached, of all loads; null where none is known. */
export function nearestLimitWords(planned: JobPlan, units: Units): string | null {
  const known = planned.plan.loadCases.flatMap(({ loadCase, limits }) =>
    limits.flatMap((limit) =>
      limit.allowed === null || limit.verdict === 'not checked'
        ? []
        : [{ loadCase, limit, used: limit.load / limit.allowed }],
    ),
  );
  if (known.length === 0) return null;
  const { loadCase, limit } = known.reduce((a, b) => (b.used > a.used ? b : a));
  return words.limits.nearest(fuelWords(planned), limitInLoad(planned, loadCase, limit, units));
}

/** "Not checked, figure needed: …" for every limit that nobody has read, once; null where all are known. */
export function limitsNotChecked(planned: JobPlan): string | null {
  const needed = planned.plan.loadCases.flatMap(({ limits }) =>
    limits.filter(({ verdict }) => verdict === 'not checked').flatMap(({ of }) => neededNames(planned, of)),
  );
  const once = [...new Set(needed)];
  return once.length === 0 ? null : words.limits.notChecked(words.listed(once));
}

/** A load against a limit: "rear axle rating: 361 ± 5 of 365 kg"; or what has to be read. */
export function limitWords(planned: JobPlan, limit: LimitResult, units: Units): string {
  const { of, load, plusMinus, allowed, verdict } = limit;
  const notChecked = (): string => words.limits.notChecked(words.listed(neededNames(planned, of)));
  if (allowed === null) return notChecked();
  const figure = formatFigureNumber({ value: load, plusMinus }, 'mass', units);
  const most = `${formatPlainNumber(allowed, 'mass', units)} ${unitOf('mass', units)}`;
  const against = words.limits.against(limitName(planned, of), figure, most);
  return verdict === 'not checked' ? words.limits.atBest(against, notChecked()) : against;
}

function limitInLoad(planned: JobPlan, loadCase: string, limit: LimitResult, units: Units): string {
  return words.limits.inLoad(loadName(planned.job, loadCase), limitWords(planned, limit, units));
}

function overWords(planned: JobPlan, { of, over, plusMinus }: LimitResult, units: Units): string {
  const by = formatFigure({ value: over ?? 0, plusMinus }, 'mass', units);
  const isRating = of.kind === 'gross' || of.kind === 'rear axle' || of.kind === 'front axle';
  return (isRating ? words.limits.overRating : words.limits.overBy)(by, limitName(planned, of));
}

/** What a limit is of. */
export function limitName(planned: JobPlan, of: LimitOf): string {
  return words.limits.of[of.kind](of.kind === 'place' ? placeName(planned.job, of.place) : '');
}

/** What has to be read before a load can be held against a limit. */
function neededNames(planned: JobPlan, of: LimitOf): readonly string[] {
  return limitNeeds(planned, of).map(({ what }) => words.limits.needed[what](limitName(planned, of)));
}

function fuelWords(planned: JobPlan): string {
  const unknown = planned.inputs.notes.some(({ code }) => code === 'fuel not known');
  return unknown ? words.limits.fuel.asWeighed : words.limits.fuel.full;
}
