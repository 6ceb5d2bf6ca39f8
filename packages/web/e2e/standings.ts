import type { Page } from '@playwright/test';
import type { Figure } from '@sagwright/model/plan/answer';
import {
  formatFigureNumber,
  formatValueNumber,
  formatWidth,
  type ShownDimension,
  unitOf,
} from '@sagwright/workbench/format/format';
import type { Units } from '@sagwright/workbench/format/units';
import type { PlanDocument, StandingDocument } from '@sagwright/workbench/result/document';
import { expect } from 'vitest';

/** Where both wheels rest under every load, and what stands on them: as the terminal has it, and as the page shows it. */
const ends = ['rear', 'front'] as const;

/**
 * The page on its Machine tab shows what the plan says, in each set-up and for every load: sags with their ± on both ladders, axle
 * loads with theirs under the picture. Leaves the page at the last load, as found.
 */
export async function expectStandings(page: Page, plan: PlanDocument, units: Units): Promise<void> {
  const keys = page.getByRole('group', { name: 'Loads' }).locator('[aria-pressed]');
  await expect.poll(() => keys.count()).toBe(plan.loadCases.length + 1);
  const asFound = [plan.alone, ...plan.loadCases.map((load) => load.asFound)];
  for (const [i, standing] of asFound.entries()) {
    await keys.nth(i).click();
    if (i > 0) await page.getByRole('button', { name: 'as found', exact: true }).click();
    await expectLoads(page, standing, units);
    if (i === 0) await expectSags(page, asFound, units);
  }
  const planned = [
    plan.alone,
    ...plan.loadCases.map(
      ({ id, asFound }) => plan.planned.find(({ loadCase }) => loadCase === id)?.standing ?? asFound,
    ),
  ];
  for (const [i, { id }] of plan.loadCases.entries()) {
    await keys.nth(i + 1).click();
    const key = page.getByRole('button', { name: 'planned', exact: true });
    const isPlanned = isSet(plan, id);
    expect(await key.isEnabled()).toBe(isPlanned);
    if (!isPlanned) continue;
    await key.click();
    await expectLoads(page, planned[i + 1]!, units);
    await expectSags(page, planned, units);
    await page.getByRole('button', { name: 'as found', exact: true }).click();
  }
}

/** Some spring was planned for this load at one of its ends. */
function isSet(plan: PlanDocument, load: string): boolean {
  return ends.some((end) => {
    const { inView, springs } = plan[end];
    const cells = springs.find(({ id }) => id === inView.spring)?.cells ?? [];
    return cells.some((cell) => cell.loadCase === load && cell.kind === 'planned');
  });
}

async function expectSags(page: Page, standings: readonly StandingDocument[], units: Units): Promise<void> {
  for (const [n, end] of ends.entries()) {
    const said = page.locator('.ladder').nth(n).locator('.spoken li');
    const wanted = standings.map((standing) => {
      if (standing.kind !== 'rest') throw new Error(`a load that does not rest: ${standing.kind}`);
      return sagWords(standing[end].travel, units);
    });
    await expect
      .poll(async () => (await said.allTextContents()).map((text) => restsIn(text)), { message: end })
      .toEqual(wanted);
  }
}

/** "59 ± 2" out of "Load C, rear: rests at 59 of 86 millimetres, plus or minus 2; wanted 29 to 33." */
function restsIn(sentence: string): string {
  const found = /, (?:rear|front): rests at (\S+) of \S+ [^,;]+(?:, plus or minus ([^;]+?))?(?:;.*)?\.$/.exec(
    sentence,
  );
  return found === null ? sentence : `${found[1]} ± ${found[2] ?? 'not known'}`;
}

function sagWords(travel: Figure, units: Units): string {
  const value = formatValueNumber(travel, 'length', units);
  return `${value} ± ${travel.plusMinus === null ? 'not known' : widthNumber(travel.plusMinus, 'length', units)}`;
}

function widthNumber(width: number, dimension: ShownDimension, units: Units): string {
  return formatWidth(width, dimension, units).slice(0, -` ${unitOf(dimension, units)}`.length);
}

async function expectLoads(page: Page, standing: StandingDocument, units: Units): Promise<void> {
  const shown = page.locator('.side-load');
  const loads = standing.kind === 'rest' ? standing.axleLoads : null;
  const wanted =
    loads === null
      ? []
      : (['rear', 'total', 'front'] as const).map((of) => {
          const figure = { value: loads[of], plusMinus: loads[`${of}PlusMinus`] };
          const [value, width] = formatFigureNumber(figure, 'mass', units).split(' ± ');
          return [`${value} ${units.unit.mass}`, `± ${width}`];
        });
  const texts = (): Promise<string[][]> =>
    shown.evaluateAll((marks) =>
      marks.map((mark) =>
        [...mark.querySelectorAll('text:not(.side-load-limit)')].map(({ textContent }) => textContent ?? ''),
      ),
    );
  await expect.poll(texts).toEqual(wanted);
}
