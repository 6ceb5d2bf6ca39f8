/** Every figure of every example, as the page shows it, against what the terminal says of the same file. */
import type { Page } from '@playwright/test';
import {
  format,
  formatFigureNumber,
  formatNumber,
  formatRange,
  formatWidth,
} from '@sagwright/workbench/format/format';
import type { Units } from '@sagwright/workbench/format/units';
import type { EndDocument, PlannedDocument } from '@sagwright/workbench/result/document';
import { settingNumber } from '@sagwright/workbench/words/settings';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, openText, visit } from './page.ts';
import { expectStandings } from './standings.ts';
import { exampleNames, planOf, unitsOf } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

describe.each(exampleNames)('%s', (name) => {
  test('stands on the page as the terminal says, as found and planned', async () => {
    const text = exampleText(name);
    const { context, page, errors } = await visit(desk);
    await openText(page, text);
    await expectStandings(page, planOf(text), unitsOf(text));
    expect(errors).toEqual([]);
    await context.close();
  });

  test('is set on the page as the terminal says, with every spring', async () => {
    const text = exampleText(name);
    const plan = planOf(text);
    const { context, page, errors } = await visit(desk);
    await openText(page, text);
    await page.locator('.tab-index-tab').nth(1).click();
    await page.locator('.choose-answer').waitFor();
    for (const [end, key] of [
      ['rear', /^Rear springs/],
      ['front', /^Fork springs/],
    ] as const) {
      await page.getByRole('button', { name: key }).click();
      await expectSprings(page, plan[end], unitsOf(text));
    }
    expect(errors).toEqual([]);
    await context.close();
  });
});

async function expectSprings(page: Page, plan: EndDocument, units: Units): Promise<void> {
  const { suggestion, springs } = plan;
  const names = page.locator('.spring-row h3');
  await expect.poll(() => names.allTextContents()).toEqual(springs.map((spring) => spring.name));
  const suggested = springs.filter(({ id }) => suggestion.kind === 'spring' && id === suggestion.spring);
  expect(await page.locator('.spring-row[data-suggested] h3').allTextContents()).toEqual(
    suggested.map((spring) => spring.name),
  );
  for (const [i, spring] of springs.entries()) {
    const row = page.locator('.spring-row').nth(i);
    const open = row.getByRole('button', { name: `More about ${spring.name}` });
    if ((await open.count()) > 0) await open.click();
    const cells = spring.cells.filter((cell) => cell.kind === 'planned');
    expect(await columns(row)).toEqual(wantedColumns(cells, units));
    const preloads = (await row.locator('.spoken li').allTextContents()).flatMap(preloadIn);
    if (preloads.length > 0) expect(preloads).toEqual(cells.flatMap((cell) => wantedPreload(cell, units)));
  }
}

const shown = ['setting', 'length', 'rests', 'bounces'] as const;
type Columns = Partial<Record<(typeof shown)[number], readonly string[]>>;

/** The columns of what hands set with one spring; one that would be empty throughout is left out. */
async function columns(row: ReturnType<Page['locator']>): Promise<Columns> {
  const read: [string, readonly string[]][] = [];
  for (const what of shown) {
    const texts = await row.locator(`td[data-what="${what}"]`).allTextContents();
    if (texts.length > 0) read.push([what, texts]);
  }
  return Object.fromEntries(read);
}

function wantedColumns(cells: readonly PlannedDocument[], units: Units): Columns {
  const all: Required<Columns> = {
    setting: cells.map((cell) => settingOf(cell, units)),
    length: cells.map(({ set: { setting, springLength } }) =>
      setting === null || springLength === null ? '' : formatNumber(springLength, 'length', units),
    ),
    rests: cells.map(({ set: { sag } }) =>
      sag === null
        ? ''
        : `${formatFigureNumber(sag.travel, 'length', units)}, ${format(sag.share, 'share', units)}`,
    ),
    bounces: cells.map(({ set: { frequency, frequencyWithoutTyre } }) =>
      [frequency, frequencyWithoutTyre]
        .flatMap((each) => (each === null ? [] : [formatNumber(each, 'frequency', units)]))
        .map((each, i) => (i === 0 ? each : `(${each})`))
        .join(' '),
    ),
  };
  return Object.fromEntries(Object.entries(all).filter(([, texts]) => texts.some((text) => text !== '')));
}

/** What hands set: the adjuster, or the pressure where that is what answers the load. */
function settingOf({ set: { setting }, pressure }: PlannedDocument, units: Units): string {
  if (setting !== null) return settingNumber(setting.at, units);
  return pressure?.isPlanned ? formatNumber(pressure.set.fullyOut, 'pressure', units) : '';
}

/** "16.4 to 23.0 mm ± 2.3" out of "Load A, …: 16.4 to 23.0 mm of preload, plus or minus 2.3 mm; in reach: 11.1." */
function preloadIn(sentence: string): readonly string[] {
  const [, range, width] = /: (\S+ to \S+ \S+) of preload, plus or minus ([^;]+);/.exec(sentence) ?? [];
  return range === undefined ? [] : [`${range} ± ${width}`];
}

function wantedPreload({ preloadInterval, positions }: PlannedDocument, units: Units): readonly string[] {
  if (preloadInterval === null || positions === null) return [];
  const { loosest, tightest } = preloadInterval;
  const width = positions.aim.plusMinus;
  return [
    `${formatRange(loosest, tightest, 'length', units)} ± ${width === null ? 'not known' : formatWidth(width, 'length', units)}`,
  ];
}
