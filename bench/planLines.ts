import { readFileSync } from 'node:fs';
import type { Planned } from '@sagwright/model/plan/answer';
import { plan } from '@sagwright/model/plan/plan';
import type { PlanQuestion } from '@sagwright/model/plan/question';
import { readJob } from '@sagwright/records/read';
import { planJob } from '@sagwright/workbench/path';
import { invented } from './question.ts';
import { type Line, rounded } from './table.ts';
import { timesOf } from './times.ts';
import { linkage, twinShocks } from './tourer.ts';

const WARM_UP = 20;
const RUNS = 50;
/** A picture on a screen lasts 1/60 s. */
const AIM = '<< 16';

/** How long a whole plan takes, every spring with every load and every ±. */
export function planLines(): readonly Line[] {
  const plain = invented(twinShocks);
  const times = timesOf(() => plan(plain), WARM_UP, RUNS);
  const drawn = invented(linkage);
  const drawnTimes = timesOf(() => plan(drawn), WARM_UP, RUNS);
  return [
    { name: `A whole plan: ${sizeOf(plain)}` },
    { name: 'the first, code not yet compiled', figure: rounded(times.first), unit: 'ms' },
    { name: 'twin shocks, median', figure: rounded(times.median), unit: 'ms', aim: AIM },
    { name: 'twin shocks, 95th percentile', figure: rounded(times.p95), unit: 'ms', aim: AIM },
    { name: 'drawn ratio curve, median', figure: rounded(drawnTimes.median), unit: 'ms', aim: AIM },
    { name: 'drawn ratio curve, 95th percentile', figure: rounded(drawnTimes.p95), unit: 'ms', aim: AIM },
  ];
}

/** How long the whole way of a job takes: read from its text, checked, brought into SI with its ±, planned. */
export function jobLines(): readonly Line[] {
  const file = 'examples/two-and-a-box.json';
  const text = readFileSync(file, 'utf8');
  const { springs, loads } = planned(text);
  const times = timesOf(() => planned(text), WARM_UP, RUNS);
  return [
    { name: `From the text of ${file} to its plan: ${springs} springs, ${loads} loads` },
    { name: 'median', figure: rounded(times.median), unit: 'ms', aim: AIM },
    { name: '95th percentile', figure: rounded(times.p95), unit: 'ms', aim: AIM },
  ];
}

function planned(text: string): { readonly springs: number; readonly loads: number } {
  const read = readJob(text);
  if (!read.ok) throw new Error(`the example is no job: ${read.problems[0]?.message}`);
  const result = planJob(read.job);
  if (!result.ok) throw new Error(`the example has no plan: ${result.problems[0]?.message}`);
  const { rear, front, loadCases } = result.plan;
  return { springs: rear.springs.length + front.springs.length, loads: loadCases.length };
}

/** What is timed, and that it is the whole of it: a cell without its ± would be no plan. */
function sizeOf(question: PlanQuestion): string {
  const { rear, front, loadCases } = plan(question);
  const springs = [...rear.springs, ...front.springs];
  const planned = springs.flatMap((spring) =>
    spring.cells.flatMap((cell) => (cell.kind === 'planned' ? [cell.cell] : [])),
  );
  const cells = springs.length * loadCases.length;
  if (planned.filter(hasSpread).length < cells) {
    throw new Error(
      `${planned.filter(hasSpread).length} of ${cells} cells are planned with their ±; all of them must be`,
    );
  }
  const inputs = question.inputs.length + Math.max(...question.loadCases.map((load) => load.inputs.length));
  return `${springs.length} springs, ${loadCases.length} loads, up to ${inputs} inputs`;
}

function hasSpread(cell: Planned): boolean {
  return (cell.positions?.aim.plusMinus ?? 0) > 0 && (cell.set.travel.plusMinus ?? 0) > 0;
}
