import { rangeOf } from '@sagwright/model/plan/adjuster';
import type { Figure, Flip, Remedy, SpringPlan, Suggestion } from '@sagwright/model/plan/answer';
import { format, formatFigure, formatQuantity, formatRange, formatWidth } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { type End, leastLeft, springInView } from '../result/inView.ts';
import { pressureRemedyWords } from '../shock/reasons.ts';
import { workedOutRate } from '../springs/words.ts';
import { words } from './catalogue.ts';
import { shock } from './english/shock.ts';
import { loadName, springName } from './names.ts';
import { reasonWords } from './reasons.ts';

/** What is suggested for an end: a headline, then why, and what would change the answer; or what would help. */
export interface Suggested {
  readonly headline: string;
  readonly sentences: readonly string[];
  /** Where nothing fits: what would, in order of honesty. */
  readonly remedies: readonly string[];
}

export function suggestionWords(planned: JobPlan, end: End, units: Units): Suggested {
  const { suggestion } = planned.plan[end];
  switch (suggestion.kind) {
    case 'nothing to choose':
      return { headline: nothingWords(planned, end), sentences: [], remedies: [] };
    case 'none': {
      const remedies = remediesWords(planned, end, suggestion.remedies, units);
      return {
        headline: words.suggestion.none(end),
        sentences: [],
        remedies: remedies.length === 0 ? [noRemedyWords(planned, end)] : remedies,
      };
    }
    case 'spring':
      return springSuggested(planned, end, suggestion, units);
  }
}

function springSuggested(
  planned: JobPlan,
  end: End,
  suggestion: Extract<Suggestion, { kind: 'spring' }>,
  units: Units,
): Suggested {
  const say = words.suggestion;
  const { job, plan } = planned;
  const suggested = plan[end].springs.find(({ spring }) => spring === suggestion.spring)!;
  const name = springName(job, suggested.spring);
  const rate = rateWords(planned, suggested, units);
  const fit = suggested.fitted
    ? say.keep(name, rate)
    : say.fit(name, rate, job.springs[suggested.spring]?.where ?? null);
  const { by } = plan.planned[end];
  const picked = springInView(planned, end);
  const byHand = by === 'choice' && picked !== null && picked.spring !== suggested.spring;
  return {
    headline: byHand ? say.picked(springName(job, picked.spring), rateWords(planned, picked, units)) : fit,
    sentences: [
      ...(byHand ? [say.suggestedInstead(name, rate)] : []),
      ...(job.springs[suggested.spring]?.hand === false ? [say.notAtHand(name)] : []),
      plan[end].springs.length === 1 ? say.onlyOne() : say.softest(),
      ...withoutRefused(planned),
      ...closeWords(planned, end, suggested, units),
      ...runnerUpWords(planned, end, suggestion, units),
      ...suggestion.flips.map((flip) => flipWords(planned, end, suggestion, flip, units)),
    ],
    remedies: [],
  };
}

/** A spring's rate as it was typed; where it hangs on the load, as it is at the main one; worked out, with its ± and a mark. */
export function rateWords(planned: JobPlan, spring: SpringPlan, units: Units): string {
  const typed = planned.job.springs[spring.spring]?.rate;
  if (typed?.kind === 'linear') return formatQuantity(typed.rate, units);
  return workedOutRate(planned, spring, units) ?? format(spring.rate, 'rate', units);
}

/** A load that is refused has no say in the choice: that is told. */
function withoutRefused({ job, plan }: JobPlan): readonly string[] {
  const refused = plan.loadCases.filter((load) => load.refused && job.loadCases[load.loadCase]!.share > 0);
  if (refused.length === 0) return [];
  return [words.suggestion.without(words.list(refused.map(({ loadCase }) => loadName(job, loadCase))))];
}

/** Says so where what is left to tighten is less than its ±, and what the next stiffer that fits would leave. */
function closeWords(planned: JobPlan, end: End, suggested: SpringPlan, units: Units): readonly string[] {
  const least = leastLeft(planned, suggested);
  if (least === null || !isClose(least)) return [];
  const stiffer = planned.plan[end].springs.find((each) => each.fits && each.rate > suggested.rate);
  const leaves = stiffer === undefined ? null : leastLeft(planned, stiffer);
  return [
    words.suggestion.close(
      format(least.left, 'length', units),
      loadName(planned.job, least.loadCase),
      formatWidth(least.plusMinus ?? 0, 'length', units),
    ),
    ...(stiffer === undefined || leaves === null
      ? []
      : [
          words.suggestion.stifferLeaves(
            springName(planned.job, stiffer.spring),
            format(leaves.left, 'length', units),
          ),
        ]),
  ];
}

function isClose(least: ReturnType<typeof leastLeft>): boolean {
  return least !== null && least.left < (least.plusMinus ?? 0);
}

function runnerUpWords(
  planned: JobPlan,
  end: End,
  { runnerUp, spring }: Extract<Suggestion, { kind: 'spring' }>,
  units: Units,
): readonly string[] {
  if (runnerUp === null) return [];
  const { springs } = planned.plan[end];
  const next = springs.find((each) => each.spring === runnerUp.spring)!;
  const best = springs.find((each) => each.spring === spring)!;
  const name = springName(planned.job, next.spring);
  if (next.rate > best.rate || runnerUp.failsOn === null) {
    return isClose(leastLeft(planned, best)) ? [] : [words.suggestion.stifferToo(name)]; // else told already
  }
  return [words.suggestion.softerFails(name, reasonWords(planned, end, next, runnerUp.failsOn, units))];
}

function flipWords(
  planned: JobPlan,
  end: End,
  { spring, runnerUp }: Extract<Suggestion, { kind: 'spring' }>,
  flip: Flip,
  units: Units,
): string {
  const load = loadName(planned.job, flip.loadCase);
  const about = flip.to === 'runner-up' ? runnerUp!.spring : spring;
  const kilograms = kilogramsWords(planned, end, about, flip.loadCase, flip.kilograms, units);
  const say = flip.to === 'runner-up' ? words.suggestion.runnerUpWould : words.suggestion.wouldFail;
  return say(kilograms, end, load, springName(planned.job, about));
}

/** What would help, each in a line; less in several loads is one remedy, since the spring needs all of it. */
function remediesWords(
  planned: JobPlan,
  end: End,
  remedies: readonly Remedy[],
  units: Units,
): readonly string[] {
  const say = words.suggestion;
  const less = remedies.filter((remedy) => remedy.kind === 'less load');
  const inLoads = less.map(({ kilograms, loadCase, spring }) =>
    say.lessInLoad(
      kilogramsWords(planned, end, spring, loadCase, kilograms, units),
      end,
      loadName(planned.job, loadCase),
    ),
  );
  const [first] = less;
  return [
    ...(first === undefined
      ? []
      : [say.lessLoad(words.list(inLoads), springName(planned.job, first.spring))]),
    ...remedies.flatMap((remedy) => {
      if (remedy.kind === 'less load') return [];
      if (remedy.kind === 'other rate') return [otherRateWords(planned, end, remedy, units)];
      if (remedy.kind !== 'other damper')
        return [pressureRemedyWords(remedy, (id) => springName(planned.job, id), units)];
      return [
        say.otherDamper(format(remedy.moreRange, 'length', units), springName(planned.job, remedy.spring)),
      ];
    }),
  ];
}

/** Nothing alone would: it speaks of what sets the end. */
function noRemedyWords({ inputs }: JobPlan, end: End): string {
  const { adjuster, pressure } = inputs.question[end];
  return adjuster === null && pressure !== undefined ? shock.pressure.noRemedy : words.suggestion.noRemedy();
}

function otherRateWords(
  planned: JobPlan,
  end: End,
  { least, most, freeLength }: Extract<Remedy, { kind: 'other rate' }>,
  units: Units,
): string {
  return words.suggestion.otherRate(
    formatRange(least, most, 'rate', units),
    againstFitted(planned, end, least, most),
    freeLength === null ? null : format(freeLength, 'length', units),
  );
}

/** By how much a range of rates is stiffer or softer than the fitted spring; null where that lies within it. */
function againstFitted(planned: JobPlan, end: End, least: number, most: number): string | null {
  const fitted = planned.plan[end].springs.find((spring) => spring.fitted);
  if (fitted === undefined) return null;
  const percent = (rate: number): string => String(Math.round(Math.abs(rate / fitted.rate - 1) * 100));
  if (least > fitted.rate) return words.suggestion.stiffer(percent(least), percent(most));
  return most < fitted.rate ? words.suggestion.softer(percent(most), percent(least)) : null;
}

/** Kilograms on a wheel that a way of the adjuster stands for, with the ± of the adjuster's aim turned into kilograms. */
function kilogramsWords(
  planned: JobPlan,
  end: End,
  spring: string,
  loadCase: string,
  kilograms: number,
  units: Units,
): string {
  const plan = planned.plan[end].springs.find((each) => each.spring === spring)!;
  const cell = plan.cells.find((each) => each.loadCase === loadCase);
  const positions = cell?.kind === 'planned' ? cell.cell.positions : null;
  const pressure = cell?.kind === 'planned' ? cell.cell.pressure : undefined;
  const { adjuster, pressure: range } = planned.inputs.question[end];
  const ofWay = (aim: Figure, most: number): string => {
    const past = Math.abs(most - aim.value);
    const doubt = past > 0 ? ((aim.plusMinus ?? 0) * kilograms) / past : 0;
    return formatFigure({ value: kilograms, plusMinus: doubt > 0 ? doubt : null }, 'mass', units);
  };
  if (pressure?.isPlanned && range !== undefined) return ofWay(pressure.aim, range.most);
  if (positions === null || adjuster === null) return format(kilograms, 'mass', units);
  return ofWay(positions.aim, rangeOf(adjuster).most);
}

function nothingWords(planned: JobPlan, end: End): string {
  const say = words.suggestion.nothing;
  const ridden = planned.plan.loadCases.filter(({ loadCase }) => planned.job.loadCases[loadCase]!.share > 0);
  if (planned.plan[end].springs.length === 0) return say['no springs'](end);
  if (planned.plan.loadCases.length === 0) return say['no loads']();
  if (ridden.length > 0 && ridden.every((load) => load.refused)) return say.refused(end);
  return say['no target'](end);
}
