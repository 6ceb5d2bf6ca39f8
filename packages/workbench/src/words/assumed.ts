import { formatUsed, formatUsedWidth, formatWidth } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { AssumptionDocument } from '../result/document.ts';
import { type End, riddenCells, springInView } from '../result/inView.ts';
import { words } from './catalogue.ts';
import { shock } from './english/shock.ts';
import { fieldName, loadName } from './names.ts';
import { adjusterName } from './settings.ts';

/** An assumed figure with its ± and the reason for it: "rear tyre rate: 190 ± 30 N/mm (touring tyres …)". */
export function assumptionWords(planned: JobPlan, assumption: AssumptionDocument, units: Units): string {
  const figure = planned.inputs.figures.get(assumption.path)!;
  const field = fieldName(planned.job, assumption.path);
  const why = assumption.why ?? '';
  if (figure.dimension !== 'share') return words.assumed.value(field, formatUsed(figure, units), why);
  return figure.value === 0
    ? words.assumed.fit(field, why)
    : words.assumed.scale(field, formatUsedWidth(figure, units), why);
}

/** The same without the reason. */
export function shortAssumptionWords(planned: JobPlan, { path }: AssumptionDocument, units: Units): string {
  const figure = planned.inputs.figures.get(path)!;
  const shown =
    figure.dimension === 'share' ? `± ${formatUsedWidth(figure, units)}` : formatUsed(figure, units);
  return words.assumed.short(fieldName(planned.job, path), shown);
}

/** "± 0.4 mm on the collar": what an assumption alone adds at an end; null where it adds nothing to speak of. */
export function effectWords(
  planned: JobPlan,
  { effect }: AssumptionDocument,
  end: End,
  units: Units,
): string | null {
  const here = effect[end];
  return here === null || here < 5e-5
    ? null
    : words.assumed.effect(formatWidth(here, 'length', units), adjusterName(planned, end));
}

/**
 * The figure that would narrow an end's adjuster most: for the load that is ridden most, the greatest part of the ±, and the
 * ± that would be left without it. Null where nothing is aimed at.
 */
export function narrowingWords(planned: JobPlan, end: End, units: Units): string | null {
  const narrowest = narrowing(planned, end);
  if (narrowest === null) return null;
  const { loadCase, input, from, to, isPressure } = narrowest;
  const dimension = isPressure ? 'pressure' : 'length';
  return words.assumed.narrows(
    fieldName(planned.job, input),
    formatWidth(from, dimension, units),
    formatWidth(to, dimension, units),
    isPressure ? shock.pressure.air : adjusterName(planned, end),
    loadName(planned.job, loadCase),
  );
}

/** The same in figures: the input by its path, and the ± of the aim with it and without; where a pressure sets the end [Pa], else [m]. */
export function narrowing(
  planned: JobPlan,
  end: End,
): {
  readonly loadCase: string;
  readonly input: string;
  readonly from: number;
  readonly to: number;
  readonly isPressure: boolean;
} | null {
  const spring = springInView(planned, end);
  const aimed = (spring === null ? [] : riddenCells(planned, spring)).flatMap(({ loadCase, cell }) => {
    const isPressure = cell.pressure?.isPlanned === true;
    const { contributions } = isPressure ? cell.pressure! : cell;
    const aim = isPressure ? cell.pressure!.aim : cell.positions?.aim;
    return contributions.length === 0 ? [] : [{ loadCase, contributions, aim, isPressure }];
  });
  if (aimed.length === 0) return null;
  const share = ({ loadCase }: { loadCase: string }): number => planned.job.loadCases[loadCase]!.share;
  const main = aimed.reduce((a, b) => (share(b) > share(a) ? b : a));
  const [greatest] = main.contributions;
  const from = main.aim?.plusMinus ?? null;
  if (greatest === undefined || from === null) return null;
  const to = from * Math.sqrt(Math.max(0, 1 - greatest.share));
  return { loadCase: main.loadCase, input: greatest.input, from, to, isPressure: main.isPressure };
}
