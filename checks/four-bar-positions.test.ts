/**
 * Four-bar linkages with printed angles. The swingarm is the crank a, the link the coupler b, the rocker c, the distance
 * of their pivots d; the crank's pivot is the origin, the rocker's lies at (d, 0).
 *   A course's question with its answers, four decimals (transtutors.com/questions/using-the-four-bar-vector-loop-position-
 *   solution-derived-in-lectures-find-3-and-4-fo-13676847.htm): a 35, b 25, c 15, d 10, crank at 30°; open and crossed, and a
 *   point P on the coupler, 10 from the rocker's pin at 70° to the coupler.
 *   R. L. Norton, Design of Machinery, table P4-1, row a, answers of problem 4-7 (from memory, two decimals): a 2, b 7, c 9,
 *   d 6, crank at 30°: open 88.84° and 117.29°, crossed −115.21° and −143.66°.
 * Tolerance: half of the last digit printed.
 */
import type { LinkageSI } from '@sagwright/model/rear/hardPoints';
import { blankLoop, loopOf, pinAt } from '@sagwright/model/rear/link';
import { describe, expect, test } from 'vitest';

const degrees = 180 / Math.PI;

interface FourBar {
  readonly crank: number;
  readonly coupler: number;
  readonly rocker: number;
  readonly ground: number;
  readonly crankAngle: number;
}

/** The pin that joins coupler and rocker, `open` or crossed, found from the same linkage put together at another crank angle. */
function pinOf(bar: FourBar, side: 1 | -1): { x: number; y: number } {
  const loop = blankLoop();
  loopOf(putTogether(bar), loop);
  const end = crankEnd(bar);
  const out = { x: 0, height: 0 };
  expect(pinAt({ ...loop, side }, end.x - bar.ground, end.y, out)).toBe(true);
  return { x: bar.ground + out.x, y: out.height };
}

function crankEnd({ crank, crankAngle }: FourBar): { x: number; y: number } {
  return { x: crank * Math.cos(crankAngle / degrees), y: crank * Math.sin(crankAngle / degrees) };
}

/** Rocker upright and coupler level, which only says how long they are. */
function putTogether({ coupler, rocker, ground }: FourBar): LinkageSI {
  const pivot = { x: ground, height: 0 };
  const pin = { x: ground, height: rocker };
  return {
    kind: 'linkage',
    damper: { extendedLength: 1, sideways: 0 },
    rocker: { on: 'frame', pivot, pin },
    linkEnd: { x: ground - coupler, height: rocker },
    rockerEye: pin,
    farEye: { on: 'frame', x: 0, height: 1 },
  };
}

function anglesOf(bar: FourBar, side: 1 | -1): { coupler: number; rocker: number } {
  const end = crankEnd(bar);
  const pin = pinOf(bar, side);
  return {
    coupler: degrees * Math.atan2(pin.y - end.y, pin.x - end.x),
    rocker: degrees * Math.atan2(pin.y, pin.x - bar.ground),
  };
}

/** Of the two sides, the one on which the coupler stands at this angle. */
function atCoupler(
  bar: FourBar,
  angle: number,
  within: number,
): { coupler: number; rocker: number; side: 1 | -1 } {
  const found = ([1, -1] as const)
    .map((side) => ({ ...anglesOf(bar, side), side }))
    .find(({ coupler }) => Math.abs(turnOf(coupler - angle)) < within);
  if (found === undefined) throw new Error(`no coupler at ${angle}°`);
  return found;
}

function turnOf(angle: number): number {
  return angle - 360 * Math.round(angle / 360);
}

describe('the course’s linkage', () => {
  const bar = { crank: 35, coupler: 25, rocker: 15, ground: 10, crankAngle: 30 };

  test.each([
    ['open', 254.1745, 334.0983, 33.4666, -5.8245],
    ['crossed', 187.3223, 107.3985, 10.1047, 5.4293],
  ])('%s', (_, coupler, rocker, x, y) => {
    const found = atCoupler(bar, coupler, 5e-5);
    expect(Math.abs(turnOf(found.rocker - rocker))).toBeLessThan(5e-5);
    const pin = pinOf(bar, found.side);
    // Back from the pin towards the crank, turned by 70° from the coupler.
    const angle = (found.coupler - 70) / degrees;
    expect(pin.x - 10 * Math.cos(angle)).toBeCloseTo(x, 4);
    expect(pin.y - 10 * Math.sin(angle)).toBeCloseTo(y, 4);
  });
});

describe('Norton’s row a, from memory', () => {
  const bar = { crank: 2, coupler: 7, rocker: 9, ground: 6, crankAngle: 30 };

  test.each([
    ['open', 88.84, 117.29],
    ['crossed', -115.21, -143.66],
  ])('%s', (_, coupler, rocker) => {
    const found = atCoupler(bar, coupler, 5e-3);
    expect(Math.abs(turnOf(found.rocker - rocker))).toBeLessThan(5e-3);
  });
});
