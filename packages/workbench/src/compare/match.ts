import { toSI, type Unit } from '@sagwright/records/units';
import { isQuantity } from './isQuantity.ts';

type Fields = Readonly<Record<string, unknown>>;

/** One member of a list in either of the two, or in both. */
export interface Matched {
  /** Its id or place in each. */
  readonly a: string | null;
  readonly b: string | null;
}

/**
 * Members of two lists that are the same part. Ids are given by whoever typed the job, so they are asked last: first the same kind
 * and name, then the only one of a kind in either list, then the same id and kind.
 */
export function matchMembers(a: Fields, b: Fields): readonly Matched[] {
  const left = { a: new Set(Object.keys(a)), b: new Set(Object.keys(b)) };
  const pairs: Matched[] = [];
  const pairBy = (keyOf: (id: string, member: Fields) => string, onlyOne: boolean): void => {
    const byKey = grouped([...left.b], (id) => keyOf(id, b[id] as Fields));
    for (const [key, ids] of grouped([...left.a], (id) => keyOf(id, a[id] as Fields))) {
      const others = byKey.get(key) ?? [];
      if (onlyOne && (ids.length !== 1 || others.length !== 1)) continue;
      for (const [i, other] of others.slice(0, ids.length).entries()) {
        pairs.push({ a: ids[i]!, b: other });
        left.a.delete(ids[i]!);
        left.b.delete(other);
      }
    }
  };
  const kindOf = ({ kind, end }: Fields): string => `${kind ?? ''} ${end ?? ''}`;
  pairBy((_, member) => `${kindOf(member)} ${String(member.name).trim().toLowerCase()}`, false);
  pairBy((id, member) => `${kindOf(member)} ${id}`, false);
  pairBy((_, member) => kindOf(member), true);
  const rank = new Map(Object.keys(a).map((id, i) => [id, i]));
  pairs.sort((one, other) => rank.get(one.a!)! - rank.get(other.a!)!);
  return [
    ...pairs,
    ...[...left.a].map((id) => ({ a: id, b: null })),
    ...[...left.b].map((id) => ({ a: null, b: id })),
  ];
}

/** Columns by which rows are told apart: the figure that was gone to, not the one that was read there. */
const goneTo = ['wheel', 'compression', 'pressure', 'travel'] as const;

/** Rows of two tables, by id or place, that were read at the same place; rows without such a column by where they stand. */
export function matchRows(a: Fields, b: Fields): readonly Matched[] {
  const [inA, inB] = [placesIn(a), placesIn(b)];
  const idInB = new Map(inB.map(({ place, id }) => [place, id]));
  const here = new Set(inA.map(({ place }) => place));
  return [
    ...inA.map(({ place, id }) => ({ a: id, b: idInB.get(place) ?? null })),
    ...inB.flatMap(({ place, id }) => (here.has(place) ? [] : [{ a: null, b: id }])),
  ];
}

/** Where each row was read; the second reading of a place is not the first one's repeat in the other table. */
function placesIn(rows: Fields): readonly { readonly id: string; readonly place: string }[] {
  const seen = new Map<string, number>();
  return Object.entries(rows).map(([id, row], i) => {
    const at = placeOf(row) ?? `no. ${i}`;
    const times = seen.get(at) ?? 0;
    seen.set(at, times + 1);
    return { id, place: `${at} ${times}` };
  });
}

/**
 * The figure that was gone to, in nine digits of SI: 25.4 mm and 1 in are one place, whatever their conversion leaves in the last
 * ones. Else the parts that are named: a length from pivot to eye. Null where neither is there.
 */
function placeOf(row: unknown): string | null {
  if (typeof row !== 'object' || row === null || isQuantity(row)) return null;
  const column = goneTo.find((name) => Object.hasOwn(row, name));
  if (column === undefined) {
    const named = Object.values(row).filter((each) => typeof each === 'string');
    return named.length === 0 ? null : named.join(', ');
  }
  const { value, unit } = (row as Record<string, { value: number; unit: Unit }>)[column]!;
  return toSI(value, unit).toFixed(9);
}

function grouped(ids: readonly string[], keyOf: (id: string) => string): ReadonlyMap<string, string[]> {
  const groups = new Map<string, string[]>();
  for (const id of ids) {
    const group = groups.get(keyOf(id));
    if (group === undefined) groups.set(keyOf(id), [id]);
    else group.push(id);
  }
  return groups;
}
