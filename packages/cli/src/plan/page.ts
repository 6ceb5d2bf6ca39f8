import type { Units } from '@sagwright/workbench/format/units';
import type { JobPlan } from '@sagwright/workbench/path';
import type { PlanDocument, PlannedDocument, SpringDocument } from '@sagwright/workbench/result/document';
import type { Look, Paint } from '../terminal/paint.ts';
import { wrap } from '../terminal/text.ts';

/** All that a page of the terminal is made from. */
export interface Page {
  readonly planned: JobPlan;
  readonly result: PlanDocument;
  readonly units: Units;
  readonly width: number;
  readonly paint: Paint;
  readonly full: boolean;
}

export type End = 'rear' | 'front';

export const ends: readonly End[] = ['rear', 'front'];

/** Loads go by letters in the order of the job, so that tables can name them in one column. */
export function letterOf(page: Page, loadCase: string): string {
  const place = page.result.loadCases.findIndex(({ id }) => id === loadCase);
  return place < 26 ? String.fromCharCode(65 + place) : String(place + 1);
}

export function nameOf(page: Page, loadCase: string): string {
  return `${letterOf(page, loadCase)}  ${page.planned.job.loadCases[loadCase]!.name}`;
}

/** The spring that speaks for an end, as the document has it. */
export function inView(page: Page, end: End): SpringDocument | null {
  const { springs, inView: view } = page.result[end];
  return springs.find(({ id }) => id === view.spring) ?? null;
}

export function plannedCell(spring: SpringDocument | null, loadCase: string): PlannedDocument | null {
  const cell = spring?.cells.find((each) => each.loadCase === loadCase);
  return cell?.kind === 'planned' ? cell : null;
}

/** The load that is ridden most. */
export function mainLoad(page: Page): string | null {
  const [first, ...rest] = page.result.loadCases;
  if (first === undefined) return null;
  return rest.reduce((a, b) => (b.share > a.share ? b : a), first).id;
}

/** A title with what stands beside it, wrapped where the terminal is narrow. */
export function heading(
  page: Page,
  title: string,
  text: string,
  look: Look | null = null,
): readonly string[] {
  const { width, paint } = page;
  if (text === '') return [paint(title, 'strong')];
  const painted = (part: string): string => (look === null ? part : paint(part, look));
  return wrap(`${title}  ${text}`, width, '', '  ').map((line, i) =>
    i === 0 ? `${paint(title, 'strong')}  ${painted(line.slice(title.length + 2))}` : painted(line),
  );
}

/** A cell that does not give what is wanted is looked at; where nothing can be set there is nothing to look at. */
export function lookOfReach(cell: PlannedDocument | null): Look | null {
  const kind = cell?.reach.kind ?? 'reached';
  return kind === 'reached' || kind === 'no adjuster' ? null : 'attention';
}
