/** What hands change on the page gives the figures that the terminal gives of a file changed the same way. */
import type { Locator, Page } from '@playwright/test';
import type { JobDocument } from '@sagwright/records/schema';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Desk, exampleText, openDesk, planned, savedText, visit } from './page.ts';
import { expectStandings } from './standings.ts';
import { jobOf, planOf, unitsOf } from './terminal.ts';

let desk: Desk;
beforeAll(async () => {
  desk = await openDesk();
});
afterAll(() => desk.close());

/** The demo, which the page opens with, and the same with something in it changed. */
const demo = exampleText('two-and-a-box');
type Changeable<T> = { -readonly [K in keyof T]: Changeable<T[K]> };
function changed(change: (job: Changeable<JobDocument>) => void): string {
  const job = JSON.parse(demo) as Changeable<JobDocument>;
  change(job);
  return JSON.stringify(job);
}

/** How a key is pressed: by a finger, or from the keyboard alone. */
const hands = {
  touch: (key: Locator) => key.tap(),
  keyboard: async (key: Locator) => {
    await key.focus();
    await key.press('Enter');
  },
} as const;
const ways = ['touch', 'keyboard'] as const;

/** The page stands and is saved as the file does that was changed the same way. */
async function expectAs(page: Page, text: string): Promise<void> {
  await page.locator('.tab-index-tab').nth(0).click();
  await planned(page);
  await expectStandings(page, planOf(text), unitsOf(text));
  expect(jobOf(await savedText(page))).toEqual(jobOf(text));
}

/** Opens the thing that a tag names, on the load with all of it. */
async function openThing(page: Page, press: (key: Locator) => Promise<void>, name: RegExp): Promise<void> {
  await press(page.getByRole('group', { name: 'Loads' }).getByRole('button', { name: /^the fortnight/ }));
  await press(page.locator('.side-tag').and(page.getByRole('button', { name })));
  await page.locator('.sheet-says').waitFor();
}

test.each(ways)('by %s, a mass made heavier', async (way) => {
  const { context, page, errors } = await visit(desk);
  await openThing(page, hands[way], /^Pepper/);
  for (let i = 0; i < 3; i += 1) await hands[way](page.getByRole('button', { name: 'Mass: more by 1 kg' }));
  const text = changed((job) => {
    job.things.pepper!.mass.value += 3;
  });
  await expectAs(page, text);
  expect(errors).toEqual([]);
  await context.close();
});

test.each(ways)('by %s, a place moved back', async (way) => {
  const { context, page } = await visit(desk);
  await openThing(page, hands[way], /^Pepper/);
  for (let i = 0; i < 4; i += 1)
    await hands[way](page.getByRole('button', { name: /^Ahead of rear axle.*: less by 10 mm/ }));
  await expectAs(
    page,
    changed((job) => {
      const seat = Object.values(job.machine.places).find(({ name }) => name === 'front seat')!;
      seat.at!.x.value -= 40;
    }),
  );
  await context.close();
});

test.each(ways)('by %s, another spring planned', async (way) => {
  const { context, page } = await visit(desk);
  await hands[way](page.locator('.tab-index-tab').nth(1));
  const row = page.locator('.spring-row').filter({ has: page.getByRole('heading', { name: 'Larch' }) });
  await hands[way](row.getByRole('button', { name: /^More about Larch/ }));
  await hands[way](row.getByRole('button', { name: 'Plan this one' }));
  await row.getByRole('button', { name: 'Back to what is suggested' }).waitFor();
  await expectAs(
    page,
    changed((job) => {
      const [larch] = Object.entries(job.springs).find(([, { name }]) => name === 'Larch')!;
      job.choice = { rear: larch };
    }),
  );
  await context.close();
});

test.each(ways)('by %s, a wanted sag aimed higher', async (way) => {
  const { context, page } = await visit(desk);
  await hands[way](page.locator('.tab-index-tab').nth(1));
  await hands[way](page.getByRole('button', { name: /^Wanted sag/ }));
  await hands[way](page.getByRole('button', { name: /^2 people/ }));
  for (let i = 0; i < 2; i += 1)
    await hands[way](page.getByRole('button', { name: 'Aim, moves all: less by 1 %' }));
  await hands[way](page.getByRole('button', { name: 'No more than: more by 1 %' }));
  await expectAs(
    page,
    changed((job) => {
      const { wanted } = job.targetSets.landing!.rows['r-two']!;
      for (const name of ['low', 'aim', 'high'] as const) wanted[name].value -= 2;
      wanted.high.value += 1;
    }),
  );
  await context.close();
});

test.each(ways)('by %s, a load weighed on two scales, and listed again', async (way) => {
  const { context, page, errors } = await visit(desk);
  const press = hands[way];
  await press(page.getByRole('group', { name: 'Loads' }).getByRole('button', { name: /^the fortnight/ }));
  await press(page.getByRole('button', { name: 'Load E', exact: true }));
  await press(page.locator('summary', { hasText: 'Weighed on scales instead' }));
  const goBy = page.getByRole('button', { name: 'Go by the scales' });
  for (const [end, figure] of [
    ['front', '207'],
    ['rear', '372.5'],
  ] as const) {
    expect(await goBy.isDisabled()).toBe(true);
    await press(page.locator(`[id="weighed.${end}"] [data-field-face]`));
    await page.keyboard.type(figure);
    await press(page.getByRole('button', { name: `Write ${figure}` }));
  }
  await press(goBy);
  const list = page.getByRole('button', { name: 'List what is aboard instead' });
  await list.waitFor();
  await expectAs(
    page,
    changed((job) => {
      const { aboard: _listed, ...rest } = job.loadCases.fortnight as { aboard: object };
      const scales = { front: { value: 207, unit: 'kg' }, rear: { value: 372.5, unit: 'kg' } };
      job.loadCases.fortnight = { ...rest, scales } as Changeable<JobDocument['loadCases'][string]>;
    }),
  );
  await press(page.getByRole('button', { name: 'Load E', exact: true }));
  await press(list);
  await expectAs(page, demo);
  expect(errors).toEqual([]);
  await context.close();
});

test('a rate typed in lbf/in stands there in each unit, and comes back from the file as it was typed', async () => {
  const { context, page, errors } = await visit(desk);
  await page.getByRole('button', { name: 'This machine' }).click();
  await page.getByRole('navigation').getByRole('button', { name: 'Springs', exact: true }).click();
  const [id] = Object.entries(jobOf(demo).springs).find(([, { name }]) => name === 'Ash')!;
  await page.locator(`[id="springs.${id}.rate.rate"] [data-field-face]`).click();
  const sheet = page.getByRole('dialog');
  await page.keyboard.type('160');
  await sheet.getByRole('button', { name: /^lbf\/in/ }).click();
  // 1 lbf/in = 0.175126835 N/mm and 1 kgf = 9.80665 N (NIST SP 811, B.8): 28.02 N/mm, 2.857 kgf/mm.
  const units = await sheet.locator('.unit-keys button').allTextContents();
  expect(units.map((text) => text.replaceAll('\u00a0', ' '))).toEqual([
    'N/mm= 28.0',
    'lbf/in160',
    'kgf/mm= 2.86',
  ]);
  await sheet.getByRole('button', { name: /^Write 160/ }).click();
  await expect.poll(() => page.locator(`[id="springs.${id}.rate.rate"]`).textContent()).toContain('160');
  await planned(page);
  const saved = jobOf(await savedText(page)).springs[id]!.rate;
  expect(saved).toMatchObject({ kind: 'linear', rate: { value: 160, unit: 'lbf/in' } });
  await page.locator('.tab-index-tab').nth(1).click();
  const row = page.locator('.spring-row').filter({ has: page.getByRole('heading', { name: 'Ash' }) });
  await expect.poll(() => row.locator('.spring-row-rate').textContent()).toContain('28.0');
  expect(await row.locator('.spring-row-about').textContent()).toContain('typed 160 lbf/in');
  expect(errors).toEqual([]);
  await context.close();
});
