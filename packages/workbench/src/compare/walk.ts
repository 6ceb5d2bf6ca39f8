import { isQuantity } from './isQuantity.ts';
import { type Matched, matchMembers, matchRows } from './match.ts';

type Path = readonly string[];
type Fields = Readonly<Record<string, unknown>>;

/** One leaf of two trees laid beside each other: a figure, a word, or a whole member that only one of them has. */
export interface Pair {
  readonly path: Path;
  readonly pathInB: Path;
  readonly a: unknown;
  readonly b: unknown;
}

/** Names tell parts apart, orders put them in a row, shelves hold them: none is what a part is like. */
const labels: ReadonlySet<string> = new Set(['name', 'order', 'where', 'hand']);

/** Lists of named members, by their path. */
const named: ReadonlySet<string> = new Set([
  'machine.places',
  'machine.points',
  'machine.clearances',
  'machine.knobs',
]);

/** Lists of readings, whose members have no name but where they were read. */
const readings: ReadonlySet<string> = new Set([
  'machine.rear.travel.points',
  'machine.rear.travel.tape',
  'machine.rear.travel.earlierSurvey',
  'fitting.rear.tools',
]);

/** The leaves of two trees that stand at a path in each, in the order of the first, then what only the second has. */
export function pairsOf(a: unknown, b: unknown, path: Path, pathInB: Path): Pair[] {
  if (isLeaf(a) || isLeaf(b) || isTableOfOne(a, b, path)) return [{ path, pathInB, a, b }];
  const matched = matchedIn(a, b, path);
  if (matched !== null) return matched.flatMap((member) => memberPairs(a, b, path, pathInB, member));
  const [inA, inB] = [fieldsOf(a), fieldsOf(b)];
  const names = new Set([...Object.keys(inA), ...Object.keys(inB)]);
  return [...names]
    .filter((name) => !labels.has(name))
    .flatMap((name) => pairsOf(inA[name], inB[name], [...path, name], [...pathInB, name]));
}

/** A table that only one of them has is one difference, not as many as it has rows. */
function isTableOfOne(a: unknown, b: unknown, path: Path): boolean {
  return (a === undefined || b === undefined) && isTable(a ?? b, path);
}

function isTable(value: unknown, path: Path): boolean {
  return Array.isArray(value) || readings.has(path.join('.'));
}

/** Which members of a list are the same; null where it is no list. */
function matchedIn(a: unknown, b: unknown, path: Path): readonly Matched[] | null {
  const at = path.join('.');
  if (named.has(at)) return matchMembers(fieldsOf(a), fieldsOf(b));
  return isTable(a ?? b, path) ? matchRows(fieldsOf(a), fieldsOf(b)) : null;
}

function memberPairs(a: unknown, b: unknown, path: Path, pathInB: Path, member: Matched): Pair[] {
  const own = { path: [...path, member.a ?? member.b!], pathInB: [...pathInB, member.b ?? member.a!] };
  const [inA, inB] = [
    member.a === null ? undefined : fieldsOf(a)[member.a],
    member.b === null ? undefined : fieldsOf(b)[member.b],
  ];
  return inA === undefined || inB === undefined
    ? [{ ...own, a: inA, b: inB }]
    : pairsOf(inA, inB, own.path, own.pathInB);
}

/** Fields of a group or rows of a table; none where there is nothing. */
function fieldsOf(value: unknown): Fields {
  return typeof value === 'object' && value !== null ? (value as Fields) : {};
}

function isLeaf(value: unknown): boolean {
  return value !== undefined && (typeof value !== 'object' || value === null || isQuantity(value));
}
