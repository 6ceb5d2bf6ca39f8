import { pageOf, wrap } from '../terminal/text.ts';
import { assumedLines, cautionLines, noteLines } from './assumed.ts';
import { forkLines } from './fork.ts';
import { cellLines, limitLines } from './full.ts';
import { endLines } from './hands.ts';
import { limitListLines } from './limitList.ts';
import { loadLines, refusalLines } from './loads.ts';
import type { Page } from './page.ts';
import { pressureLines } from './pressure.ts';
import { rearMotionLines } from './rearMotion.ts';
import { sagLines } from './sags.ts';
import { shockLines } from './shock.ts';
import { springLines } from './springs.ts';
import { stanceLines } from './stance.ts';

/** The plan as a person reads it beside the machine: what must not be, what hands do, where it rests, why, and what was assumed. */
export function planPage(page: Page): string {
  return pageOf([
    titleLines(page),
    refusalLines(page),
    loadLines(page),
    endLines(page, 'rear'),
    pressureLines(page),
    endLines(page, 'front'),
    sagLines(page),
    springLines(page, 'rear'),
    springLines(page, 'front'),
    rearMotionLines(page),
    shockLines(page),
    ...(page.full ? [forkLines(page)] : []),
    stanceLines(page),
    ...(page.full ? [limitListLines(page), limitLines(page), ...cellLines(page)] : []),
    assumedLines(page),
    noteLines(page),
    cautionLines(page),
  ]);
}

function titleLines({ result, width, paint }: Page): readonly string[] {
  const { name, machine } = result.job;
  return wrap(name, width)
    .map((line) => paint(line, 'strong'))
    .concat(wrap(`${machine === name ? '' : `${machine}. `}Wanted sags: ${result.targetSet.name}.`, width));
}
