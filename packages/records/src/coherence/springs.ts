import { type FieldPath, type Problem, problem } from '../problem.ts';
import { siOf } from '../schema/quantity.ts';
import type { SpringRate } from '../schema/springs.ts';
import type { JobDocument } from '../schema.ts';
import { asTyped, isAtMost, isBelow } from './compare.ts';
import { forceTableProblems } from './tables.ts';

/** Each spring by itself: a table that rises, a coil that can be wound, a solid length that can be reached. */
export function* springProblems(springs: JobDocument['springs']): Generator<Problem> {
  for (const [id, { rate, freeLength, solidLength }] of Object.entries(springs)) {
    yield* rateProblems(rate, ['springs', id, 'rate']);
    if (freeLength && solidLength && !isBelow(solidLength, freeLength)) {
      const path = ['springs', id, 'solidLength'];
      yield problem(path, 'notBelow', asTyped(solidLength), 'the free length', asTyped(freeLength));
    }
  }
}

function* rateProblems(rate: SpringRate, path: FieldPath): Generator<Problem> {
  switch (rate.kind) {
    case 'none':
    case 'linear':
      return;
    case 'series':
      if (!isAtMost(rate.soft, rate.stiff)) {
        yield problem([...path, 'soft'], 'softerIsStiffer', asTyped(rate.soft), asTyped(rate.stiff));
      }
      return;
    case 'table':
      yield* forceTableProblems(rate.rows, [...path, 'rows']);
      return;
    case 'coil':
      yield* coilProblems(rate, path);
  }
}

/** Coils of each end that do not twist. Budynas, Nisbett, Shigley's Mechanical Engineering Design, 10th ed., table 10-1. */
const idleCoils = { plain: 0, 'plain ground': 1, closed: 2, 'closed ground': 2 } as const;

function* coilProblems(coil: Extract<SpringRate, { kind: 'coil' }>, path: FieldPath): Generator<Problem> {
  const { wire, outside, mean, coils, ends } = coil;
  if ((outside === undefined) === (mean === undefined)) {
    yield problem([...path, 'outside'], 'oneDiameter', mean ? 'both' : 'neither');
  } else {
    const diameter = mean ? siOf(mean) : siOf(outside!) - siOf(wire);
    // Wire cannot be wound round nothing: inside the coil at least its own thickness is left.
    if (diameter < 2 * siOf(wire)) {
      const field = mean ? 'mean' : 'outside';
      yield problem([...path, field], 'coilTooTight', asTyped((mean ?? outside)!), asTyped(wire));
    }
  }
  const least = idleCoils[ends] + 1;
  if (coils < least) yield problem([...path, 'coils'], 'tooFewCoils', coils, ends, least);
}
