/**
 * docs/worked-example.md: a machine worked out by hand, line by line. Each printed figure is worked out again here from the
 * figures printed above it, in the plain arithmetic of the page, and has to round to what the page prints. Then the job
 * that the page prints is planned, and has to agree within what rounding by hand and the passes left out allow.
 * The arithmetic (lever rule, virtual work) is derived on the page.
 */
import { readFileSync } from 'node:fs';
import type { AtSetting } from '@sagwright/model/plan/answer';
import { readJob } from '@sagwright/records/read';
import { planJob } from '@sagwright/workbench/path';
import { describe, expect, test } from 'vitest';

const page = readFileSync(new URL('../docs/worked-example.md', import.meta.url), 'utf8');
const printed = new Map(
  [...page.matchAll(/^\| ([^|]+) \|(.+)\|$/gm)].map(([, what, rest]) => [
    what!,
    rest!.split('|').map((cell) => cell.trim()),
  ]),
);

const g = 9.80665;
const tan = 0.5095;
const cos = 0.891;

describe('what the springs carry', () => {
  test.each([
    ['sprung mass m', 165 + 195 - 24 - 30 + 90],
    ['its moment about the rear axle', (165 - 24) * 1600 + 90 * 560],
    ['its moment about the ground', (165 + 195) * 500 - 24 * 310 - 30 * 320 + 90 * 980],
    ['its centre ahead of the rear axle, x', 276_000 / 396],
    ['its centre above the ground, h', 251_160 / 396],
  ])('%s', (what, worked) => roundsTo(what, 1, worked));
});

describe('the attitude it finds', () => {
  test('tangent and cosine are those of 27°', () => {
    expect(tan).toBeCloseTo(Math.tan((27 * Math.PI) / 180), 4);
    expect(cos).toBeCloseTo(Math.cos((27 * Math.PI) / 180), 4);
  });

  test.each([1, 2, 3])('column %d', (column) => {
    const level = column === 1;
    const at = (what: string): number => figure(what, column);
    const earlier = (what: string): number => figure(what, column - 1);
    const pitch = at('pitch θ taken, rad');
    const travel = at("fork's wheel travel z, mm");
    const travelBefore = level ? 0 : earlier("fork's wheel travel z, mm");
    const frontShare = at('front share of m, kg');
    const rearShare = at('rear share of m, kg');
    roundsTo('pitch θ taken, rad', column, level ? 0 : earlier('pitch θ found, rad'));
    roundsTo(
      'wheelbase on the ground, mm',
      column,
      1600 - travelBefore * tan + (310 + travelBefore - 320 - 27) * pitch,
    );
    roundsTo('m ahead of the rear contact, mm', column, 697.0 + (634.2 - 320 - 27) * pitch);
    roundsTo(
      'front share of m, kg',
      column,
      (396 * at('m ahead of the rear contact, mm')) / at('wheelbase on the ground, mm'),
    );
    roundsTo('rear share of m, kg', column, 396 - frontShare);
    roundsTo('rear tyre pressed by, mm', column, ((rearShare + 30) * g) / 180);
    roundsTo('front tyre pressed by, mm', column, ((frontShare + 24) * g) / 160);
    roundsTo('force on both legs at the wheel, N', column, frontShare * g * (1 + pitch * tan));
    roundsTo(
      "fork's wheel travel z, mm",
      column,
      ((at('force on both legs at the wheel, N') * cos) / (2 * 9.5) - 20) * cos,
    );
    roundsTo(
      'pitch θ found, rad',
      column,
      (travel + at('front tyre pressed by, mm') - 27 - at('rear tyre pressed by, mm')) /
        (1600 - travel * tan),
    );
  });
});

describe('the rear springs', () => {
  test.each([
    ['force at the rear wheel', 219.2 * g],
    ['force of each spring', (2149.6 * 1.2) / 2],
    ['compression of each', 1289.8 / 26],
    ['stroke of the shock', 27 / 1.2],
    ['preload', 49.61 - 22.5],
    ['collar, from its loosest', 27.11 - 15.1],
    ['turns, from its loosest', 12.01 / 1.5],
    ['wheel rate', (2 * 26) / 1.2 ** 2],
    ['ride rate, tyre and springs in a row', (36.11 * 180) / (36.11 + 180)],
    ['ride frequency of the rear', Math.sqrt(30_080 / 219.2) / (2 * Math.PI)],
  ])('%s', (what, worked) => roundsTo(what, 1, worked));
});

describe('beside the program', () => {
  const { preload, set } = programsAnswer();
  const { rest } = set;
  if (rest === null) throw new Error('The program finds no rest');

  // One in the last place printed: half of it for the figure as printed, half for what the page rounds on its way (shares
  // of the mass to 0.05 kg, which is 0.03 mm of fork), for cos θ taken as 1 and for the pass left out (0.02 kg).
  test.each([
    ['front wheel on the ground, kg', figure('front share of m, kg', 3) + 24, rest.front.wheelLoad / g, 0.1],
    ['rear wheel on the ground, kg', figure('rear share of m, kg', 3) + 30, rest.rear.wheelLoad / g, 0.1],
    ["fork's wheel travel, mm", figure("fork's wheel travel z, mm", 3), 1000 * rest.front.travel, 0.1],
    ['pitch, rad', figure('pitch θ found, rad', 3), rest.pitch, 0.0001],
    ['preload, mm', figure('preload', 1), preload, 0.1],
    ['turns, from the loosest end', figure('turns, from its loosest', 1), set.turnsFromZero!, 0.1],
    ['rear wheel travel with eight turns, mm', 27, 1000 * rest.rear.travel, 0.1],
    [
      'ride frequency of the rear, Hz',
      figure('ride frequency of the rear', 1),
      rest.rear.rideFrequency!,
      0.01,
    ],
  ])('%s', (what, byHand, program, lastPlace) => {
    roundsTo(what, 0, byHand);
    roundsTo(what, 1, program);
    expect(Math.abs(byHand - program)).toBeLessThanOrEqual(lastPlace);
  });
});

test('what pitch is worth', () => {
  const level = (223.5 * g * 1.2) / 2 / 26 - 22.5;
  expect(page).toContain(`a preload of ${level.toFixed(2)} mm`);
  expect(page).toContain(`${(level - 27.11).toFixed(1)} mm of collar too much`);
  expect(page).toContain(`rest ${((level - 27.11) * 1.2).toFixed(1)} mm higher`);
  expect(page).toContain(`${(223.5 - 219.2).toFixed(1)} kg would stand on the wrong wheel`);
});

/** The job that the page prints, planned; in the page's units. */
function programsAnswer(): { readonly preload: number; readonly set: AtSetting } {
  const read = readJob(/```json\n([\s\S]*?)```/.exec(page)![1]!);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const planned = planJob(read.job);
  if (!planned.ok) throw new Error(JSON.stringify(planned.problems));
  const [cell] = planned.plan.rear.springs[0]!.cells;
  if (cell?.kind !== 'planned') throw new Error(`The rear is ${cell?.kind}, not planned`);
  const { set, preload } = cell.cell;
  return { set, preload: 1000 * preload!.value };
}

/** A printed figure: the number that a cell begins with. */
function figure(what: string, column: number): number {
  return Number.parseFloat(textOf(what, column));
}

function textOf(what: string, column: number): string {
  const text = printed.get(what)?.[column];
  if (text === undefined) throw new Error(`The page has no figure "${what}" in column ${column}`);
  return /^[\d.]+/.exec(text)![0];
}

/** Half a unit of the last place that is printed, and a hair for the binary digits of the half itself. */
function roundsTo(what: string, column: number, worked: number): void {
  const text = textOf(what, column);
  const decimals = text.split('.')[1]?.length ?? 0;
  expect(
    Math.abs(worked - Number(text)),
    `${what}: worked out as ${worked}, printed ${text}`,
  ).toBeLessThanOrEqual(0.5 * 10 ** -decimals * (1 + 1e-6));
}
