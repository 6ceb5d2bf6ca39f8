import type { Figure, SpringPlan } from '@sagwright/model/plan/answer';
import { type SpringSI, springAt } from '@sagwright/model/springs/spring';
import type { Spring } from '@sagwright/records/schema/springs';
import { type Coil, rateByDimensions, type Wound } from '../inputs/coil.ts';
import type { Desk } from '../inputs/desk.ts';
import { deskAgain } from '../inputs/deskAgain.ts';
import { ownFigure } from '../inputs/ownFigure.ts';
import { springOf } from '../inputs/springs.ts';
import { woundSpring } from '../inputs/wound.ts';
import type { JobPlan } from '../path.ts';
import type { MarkedDocument, RateDocument, StageDocument } from './document.ts';

/** Where a spring's rate comes from, its ±, and what else is known of it. */
export function rateDocument(planned: JobPlan, { spring: id, rate }: SpringPlan): RateDocument {
  const desk = deskAgain(planned);
  const spring = planned.job.springs[id]!;
  const path = `springs.${id}.rate`;
  const read = rateReader(desk, id, spring, rate);
  return {
    by: sourceOf(spring),
    plusMinus: read === null ? null : (ownFigure(desk, read)?.plusMinus ?? null),
    stages: spring.rate.kind === 'wound' ? stagesOf(desk, path, spring.rate) : [],
    marked: spring.rate.kind === 'coil' ? markedOf(desk, path, spring.rate) : null,
  };
}

/** Reads the rate that a spring has where it has `rate` now [N/m]; null without a coil. */
export function rateReader(
  desk: Desk,
  id: string,
  spring: Spring,
  rate: number,
): ((desk: Desk) => number) | null {
  const now = springOf(desk, id, spring);
  if (now.kind === 'none') return null;
  const stretch = stretchesOf(now).reduce((best, x, i, all) =>
    Math.abs(rateAt(now, x) - rate) < Math.abs(rateAt(now, best) - rate) ? all[i]! : best,
  );
  return (again) => rateAt(springOf(again, id, spring), stretch);
}

function sourceOf({ rate }: Spring): RateDocument['by'] {
  switch (rate.kind) {
    case 'none':
      return 'none';
    case 'linear':
      return 'marked';
    case 'series':
      return 'two marked';
    case 'table':
      return 'tested';
    case 'coil':
      return rate.counts === 'marked' ? 'marked' : 'coil';
    case 'wound':
      return 'winding';
  }
}

/** A compression within each stretch of one rate [m]. */
function stretchesOf(spring: Exclude<SpringSI, { kind: 'none' }>): readonly number[] {
  switch (spring.kind) {
    case 'linear':
      return [0];
    case 'series': {
      const { soft, stiff, softStroke } = spring;
      const closes = softStroke * (1 + soft / stiff);
      return [closes / 2, 2 * closes];
    }
    case 'parallel':
      return [spring.gap / 2, 2 * spring.gap];
    case 'table':
      return spring.compression.slice(1).map((x, i) => (x + spring.compression[i]!) / 2);
  }
}

function rateAt(spring: SpringSI, x: number): number {
  springAt(spring, x, at);
  return at.rate;
}

const at = { force: 0, rate: 0, energy: 0 };

function stagesOf(desk: Desk, path: string, wound: Wound): readonly StageDocument[] {
  const read = (of: (table: Extract<SpringSI, { kind: 'table' }>) => number): Figure =>
    ownFigure(desk, (again) => {
      const table = woundSpring(again, path, wound);
      return table.kind === 'table' ? of(table) : null;
    })!;
  return Object.keys(wound.sections).map((_, i) => ({
    rate: read(
      ({ force, compression }) => (force[i + 1]! - force[i]!) / (compression[i + 1]! - compression[i]!),
    ),
    to: read(({ compression }) => compression[i + 1]!),
    force: read(({ force }) => force[i + 1]!),
  }));
}

/** Both rates against each other: the ± of their difference is of both, since nothing goes into both. */
function markedOf(desk: Desk, path: string, rate: Coil): MarkedDocument | null {
  if (rate.marked === undefined) return null;
  const typed = rate.marked;
  const marked = ownFigure(desk, ({ take }) => take.known(`${path}.marked`, typed, 'springRate'))!;
  const coil = ownFigure(desk, (again) => rateByDimensions(again, path, rate))!;
  const plusMinus = Math.hypot(marked.plusMinus ?? 0, coil.plusMinus ?? 0);
  const difference = { value: coil.value - marked.value, plusMinus };
  const agrees = Math.abs(difference.value) <= plusMinus;
  const surer = (marked.plusMinus ?? 0) <= (coil.plusMinus ?? 0) ? 'marked' : 'coil';
  return {
    marked,
    coil,
    difference,
    verdict: agrees ? 'agrees' : 'differs',
    trust: agrees ? surer : 'neither',
    counts: rate.counts ?? 'coil',
  };
}
