import { type FieldPath, type Problem, problem } from '../problem.ts';
import { siOf } from '../schema/quantity.ts';
import type { SpringRate } from '../schema/springs.ts';
import type { JobDocument } from '../schema.ts';
import { asTyped, isAtMost, isBelow } from './compare.ts';
import { forceTableProblems } from './tables.ts';

/** Each spring by itself: a table that rises, a coil that can be wound, a solid length that can be reached. */
export function* springProblems(springs: JobDocument['springs']): Generator<Problem> {
  for (const [id, { rate, freeLength, solidLength, inside, spacer, end }] of Object.entries(springs)) {
    if (inside && end === 'front') yield problem(['springs', id, 'inside'], 'insideOfFork');
    if (spacer && end === 'front') yield problem(['springs', id, 'spacer'], 'spacerOfFork');
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
      return;
    case 'wound':
      yield* woundProblems(rate, path);
  }
}

/** Coils of each end that do not twist. Budynas, Nisbett, Shigley's Mechanical Engineering Design, 10th ed., table 10-1. */
const idleCoils = { plain: 0, 'plain ground': 1, closed: 2, 'closed ground': 2 } as const;

function* coilProblems(coil: Extract<SpringRate, { kind: 'coil' }>, path: FieldPath): Generator<Problem> {
  const { coils, ends, marked, counts } = coil;
  yield* diameterProblems(coil, path);
  const least = idleCoils[ends] + 1;
  if (coils < least) yield problem([...path, 'coils'], 'tooFewCoils', coils, ends, least);
  if (counts === 'marked' && !marked) yield problem([...path, 'counts'], 'countsUnmarked');
}

/** Sections of several pitches: each told in one way, above the wire, and told apart. */
function* woundProblems(wound: Extract<SpringRate, { kind: 'wound' }>, path: FieldPath): Generator<Problem> {
  yield* diameterProblems(wound, path);
  const sections = Object.entries(wound.sections).sort(([, a], [, b]) => a.order - b.order);
  const at = [...path, 'sections'];
  if (sections.length < 1 || sections.length > MOST_SECTIONS) {
    yield problem(at, 'sectionCount', sections.length, MOST_SECTIONS);
  }
  const before: number[] = [];
  for (const [id, { coils, pitch, length }] of sections) {
    if ((pitch === undefined) === (length === undefined)) {
      yield problem([...at, id, 'pitch'], 'onePitch', pitch ? 'both' : 'neither');
      continue;
    }
    const each = pitch === undefined ? siOf(length!) / coils : siOf(pitch);
    const field = [...at, id, pitch === undefined ? 'length' : 'pitch'];
    if (each < siOf(wound.wire) + LEAST_APART) {
      yield problem(field, 'pitchWithinWire', inMm(each), asTyped(wound.wire));
    } else if (before.some((other) => Math.abs(other - each) < LEAST_APART)) {
      yield problem(field, 'pitchesAlike', inMm(each), inMm(LEAST_APART));
    }
    before.push(each);
  }
}

/** More nobody tells apart on a spring. */
const MOST_SECTIONS = 8;

/** Pitches nearer to each other nobody can measure apart, and then they are one section [m]. */
const LEAST_APART = 2e-4;

function inMm(si: number): string {
  return `${Number((si * 1000).toPrecision(4))} mm`;
}

/** The diameter of a coil is told once, and leaves room inside. */
function* diameterProblems(
  { wire, outside, mean }: Pick<Extract<SpringRate, { kind: 'coil' }>, 'wire' | 'outside' | 'mean'>,
  path: FieldPath,
): Generator<Problem> {
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
}
