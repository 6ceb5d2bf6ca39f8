import type { ComparedPart, ComparedSide, CompareVerdict } from '../../compare/comparison.ts';

/** What is said of two machines, shocks or forks beside each other. */
export const compareWords = {
  parts: { machine: 'machines', shock: 'shocks', fork: 'forks' } satisfies Record<ComparedPart, string>,
  from: { job: 'job', template: 'template' } satisfies Record<ComparedSide['from'], string>,
  side: (name: string, from: string) => `${name} (${from})`,
  title: (parts: string, a: string, b: string) => `Two ${parts}: 1 ${a}, 2 ${b}`,
  count: (differing: number, alike: number) =>
    differing === 0
      ? `Nothing differs; ${fields(alike)} alike.`
      : `${differing === 1 ? 'One field differs' : `${differing} fields differ`}; ${fields(alike)} alike.`,
  /** `by` is the second less the first, in the units of both. */
  verdicts: {
    same: () => 'the same',
    equal: () => 'the same, in other units',
    within: (by) => `differ by ${by}, within both ±`,
    beyond: (by) => `differ by ${by}, more than both ±`,
    differs: (by) => (by === null ? 'differ' : `differ by ${by}; a ± is not told of both`),
    'only in a': () => 'only in the first',
    'only in b': () => 'only in the second',
  } satisfies Record<CompareVerdict, (by: string | null) => string>,
  inOtherUnit: (by: string, other: string) => `${by} (${other})`,
  part: 'told',
  yes: 'yes',
  no: 'no',
} as const;

function fields(count: number): string {
  return count === 1 ? 'one field is' : `${count} fields are`;
}
