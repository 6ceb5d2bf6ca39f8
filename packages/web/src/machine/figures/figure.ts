import type { Quantity } from '@sagwright/records/schema/quantity';
import type { ReadingKind } from '@sagwright/workbench/inputs/widths';
import type { BoundName } from '../../fields/judge.ts';
import type { Change, Edit } from '../../job/edits.ts';

/** One figure or fact of the job that a person sees and changes, with its path there. What it says is read at the path. */
export type Figure =
  | {
      readonly kind: 'quantity';
      readonly path: string;
      readonly label: string;
      readonly bound: BoundName;
      readonly reading: ReadingKind | undefined;
      /** What it stands together with, or not at all: path of the holder, and last names of what the holder needs. */
      readonly together: { readonly at: string; readonly needs: readonly string[] } | null;
    }
  | {
      readonly kind: 'number';
      readonly path: string;
      readonly label: string;
      readonly unit: string;
      readonly least: number;
      readonly most: number;
      readonly whole: boolean;
    }
  | {
      readonly kind: 'choice';
      readonly path: string;
      readonly label: string;
      readonly value: string;
      readonly choices: readonly { readonly value: string; readonly word: string }[];
      /** `done` is the history of the job: what was there before may come back from it. */
      readonly change: (document: unknown, value: string, done: readonly Change[]) => readonly Edit[];
    }
  | { readonly kind: 'size'; readonly path: string; readonly label: string }
  | { readonly kind: 'text'; readonly path: string; readonly label: string; readonly most: number }
  | {
      readonly kind: 'rows';
      readonly path: string;
      readonly label: string;
      readonly columns: readonly Column[];
      readonly least: number;
      /** How the job holds them: one after the other, or by id with an order. */
      readonly held: 'list' | 'members';
    };

/** One column of a table; a table with one column without a name holds bare quantities. */
export interface Column {
  readonly name: string | null;
  readonly label: string;
  readonly bound: BoundName;
  readonly reading: ReadingKind;
}

/** Figures that are read in one go. */
export interface FigureGroup {
  readonly id: string;
  readonly title: string;
  readonly parts: readonly FigurePart[];
}

export interface FigurePart {
  readonly title: string | null;
  /** Of a part that the job has nothing of: the key that unfolds it. */
  readonly add?: string;
  readonly figures: readonly Figure[];
}

/** Figures that a job may well do without, and nothing is said to be unchecked for: "not read", never "needed". */
const leftOut =
  /\.(?:preload|touches|measuredAt|temperature|hardening|outside|mean|marked|pitch|inside|springOver)$|^springs\.[^.]+\.spacer$|\.sections\.[^.]+\.length$|\.(?:air|gas)\.(?:(?:left|right)\.)?pressure$|\.springLength|\.lengthAdjuster|\.shock\.air\.|^choice\.|\.tyre\.(?:capacity|size)$|\.shock\.length$|\.sideways$|\.earlierLeverage$|\.tape\..*\.sideways$|\.clampHeight|\.stack|\.(?:spring|spacer)Volume$|\.air\.(?:(?:left|right)\.)?oil|\.unsprungParts/;

export function mayBeLeftOut(path: string): boolean {
  return leftOut.test(path);
}

/** A quantity by itself. */
export function quantity(path: string, label: string, bound: BoundName, reading?: ReadingKind): Figure {
  return { kind: 'quantity', path, label, bound, reading, together: null };
}

/** Quantities of one holder, which needs some of them (`needs`) as soon as it has any. */
export function together(
  at: string,
  needs: readonly string[],
  figures: readonly (readonly [name: string, label: string, bound: BoundName, reading?: ReadingKind])[],
): readonly Figure[] {
  return figures.map(([name, label, bound, reading]) => ({
    kind: 'quantity',
    path: `${at}.${name}`,
    label,
    bound,
    reading,
    together: { at, needs },
  }));
}

/** Every quantity of a job by its path, wherever it stands. */
export function quantitiesIn(value: unknown, path = ''): readonly (readonly [string, Quantity])[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('value' in value && 'unit' in value) return [[path, value as Quantity]];
  return Object.entries(value).flatMap(([name, inner]) =>
    quantitiesIn(inner, path === '' ? name : `${path}.${name}`),
  );
}
