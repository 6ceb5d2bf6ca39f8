import type { SpringPlan } from '@sagwright/model/plan/answer';
import type { LoadCaseSI } from '@sagwright/model/plan/question';
import type { JobPlan } from '../path.ts';
import { springInView } from '../result/inView.ts';
import { figures } from './figures.ts';
import type { Why, WhyQuestion } from './question.ts';

type Because = Extract<Why, { kind: 'not to be had' }>['because'];

/** Where a figure is asked for: one load, and one spring unless it is a figure of the load alone. */
export type Place =
  | { readonly kind: 'place'; readonly loadCase: LoadCaseSI; readonly spring: SpringPlan | null }
  | { readonly kind: 'nowhere'; readonly because: Because; readonly found: string };

/** Finds the load and the spring by id or by name; the load that is ridden most, and the spring in view, where none is named. */
export function placeOf(planned: JobPlan, question: WhyQuestion): Place {
  const { loadCases } = planned.inputs.question;
  const named = question.loadCase;
  const loadCase =
    named === null || figures[question.figure].of === 'spring'
      ? mainLoad(loadCases)
      : loadCases.find(({ id }) => isNamed(id, planned.job.loadCases[id]?.name, named));
  if (loadCase === undefined) return nowhere(named === null ? 'no loads' : 'no such load', named);
  if (figures[question.figure].of === 'load') return { kind: 'place', loadCase, spring: null };
  const { springs } = planned.plan[question.end];
  const spring =
    question.spring === null
      ? springInView(planned, question.end)
      : springs.find(({ spring: id }) => isNamed(id, planned.job.springs[id]?.name, question.spring!));
  if (spring === null) return nowhere('no springs', null);
  if (spring === undefined) return nowhere('no such spring', question.spring);
  return { kind: 'place', loadCase, spring };
}

/** The load that is ridden most; the first of equals. */
export function mainLoad(loadCases: readonly LoadCaseSI[]): LoadCaseSI | undefined {
  const [first, ...rest] = loadCases;
  return first === undefined ? undefined : rest.reduce((a, b) => (b.share > a.share ? b : a), first);
}

function isNamed(id: string, name: string | undefined, asked: string): boolean {
  return id === asked || name?.toLowerCase() === asked.toLowerCase();
}

function nowhere(because: Because, found: string | null): Place {
  return { kind: 'nowhere', because, found: found ?? '' };
}
