import type { Unit } from '@sagwright/records/units';
import {
  type ComparedPart,
  type ComparedRow,
  type ComparedSide,
  type ComparedValue,
  type Comparison,
  comparisonFormat,
  comparisonVersion,
  isDifference,
} from './comparison.ts';
import { isQuantity } from './isQuantity.ts';
import { type Compared, type LaidOut, layOut } from './side.ts';
import { comparedDimension, comparedFigure, judge } from './verdict.ts';
import { type Pair, pairsOf } from './walk.ts';

/**
 * Two machines, shocks or forks, field by field. A job that is held against a template is taken as far as a template holds it. Both
 * must have the part: `partsToCompare`.
 */
export function compare(a: Compared, b: Compared, part: ComparedPart): Comparison {
  const asKept = a.from === 'template' || b.from === 'template';
  const [one, other] = [layOut(a, part, asKept), layOut(b, part, asKept)];
  const rows = [
    ...pairsOf(one.part, other.part, ['machine'], ['machine']),
    ...springPairs(one, other),
    ...pairsOf(one.fitting, other.fitting, ['fitting'], ['fitting']),
  ].map((pair) => rowOf(pair, one, other));
  const differing = rows.filter(({ verdict }) => isDifference(verdict));
  return {
    format: comparisonFormat,
    version: comparisonVersion,
    part,
    a: sideOf(a),
    b: sideOf(b),
    rows: [...differing, ...rows.filter(({ verdict }) => !isDifference(verdict))],
  };
}

/** A shock or a fork of a job is called by the machine it is in. */
function sideOf(side: Compared): ComparedSide {
  return side.from === 'job'
    ? { name: side.job.machine.name, from: 'job' }
    : { name: side.template.name, from: 'template' };
}

/** Springs in the same strut. */
function springPairs(one: LaidOut, other: LaidOut): Pair[] {
  const struts = new Set([...one.springs, ...other.springs].map(({ strut }) => strut));
  return [...struts].flatMap((strut) => {
    const inA = one.springs.find((each) => each.strut === strut);
    const inB = other.springs.find((each) => each.strut === strut);
    const path = ['springs', (inA ?? inB)!.id];
    const pathInB = ['springs', (inB ?? inA)!.id];
    return inA && inB
      ? pairsOf(inA.spring, inB.spring, path, pathInB)
      : [{ path, pathInB, a: inA?.spring, b: inB?.spring }];
  });
}

function rowOf(pair: Pair, one: LaidOut, other: LaidOut): ComparedRow {
  const [path, pathInB] = [pair.path.join('.'), pair.pathInB.join('.')];
  const [a, b] = [comparedValue(pair.a, path, one), comparedValue(pair.b, pathInB, other)];
  return { path, pathInB, a, b, ...judged(a, b) };
}

function comparedValue(value: unknown, path: string, { figures }: LaidOut): ComparedValue | null {
  if (value === undefined) return null;
  if (isQuantity(value)) return { kind: 'figure', figure: comparedFigure(value, figures.get(path)) };
  if (typeof value !== 'object') return { kind: 'word', word: value as string | number | boolean };
  const { name } = value as { readonly name?: string };
  return { kind: 'part', name: name ?? null };
}

function judged(
  a: ComparedValue | null,
  b: ComparedValue | null,
): Pick<ComparedRow, 'verdict' | 'difference' | 'plusMinus'> {
  const plain = { difference: null, plusMinus: null };
  if (a === null || b === null) return { verdict: b === null ? 'only in a' : 'only in b', ...plain };
  if (a.kind === 'figure' && b.kind === 'figure' && isOfOneKind(a.figure.unit, b.figure.unit)) {
    return judge(a.figure, b.figure);
  }
  const isSame = a.kind === 'word' && b.kind === 'word' && a.word === b.word;
  return { verdict: isSame ? 'same' : 'differs', ...plain };
}

function isOfOneKind(unit: Unit, other: Unit): boolean {
  return comparedDimension(unit) === comparedDimension(other);
}
