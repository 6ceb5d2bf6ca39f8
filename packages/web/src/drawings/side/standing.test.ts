import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bodyStand, frontAxle, inBody, onDrawing, rearAxle, standing } from './standing.ts';

const bodyPoint = fc.record({
  xMm: fc.double({ min: -800, max: 2200, noNaN: true }),
  heightMm: fc.double({ min: 0, max: 1800, noNaN: true }),
});
const stance = fc.record({
  heaveMm: fc.double({ min: -150, max: 60, noNaN: true }),
  pitch: fc.double({ min: -0.15, max: 0.15, noNaN: true }),
  rearTravelMm: fc.double({ min: 0, max: 200, noNaN: true }),
  frontTravelMm: fc.double({ min: 0, max: 200, noNaN: true }),
  shockStrokeMm: fc.constant(0),
});

describe('points of the body, standing on the ground', () => {
  it('move rigidly: no two come nearer to each other, whatever the stance', () => {
    fc.assert(
      fc.property(bodyPoint, bodyPoint, stance, (a, b, state) => {
        const [p, q] = [standing(a, state), standing(b, state)];
        const before = Math.hypot(a.xMm - b.xMm, a.heightMm - b.heightMm);
        expect(Math.hypot(p.xMm - q.xMm, p.heightMm - q.heightMm)).toBeCloseTo(before, 6);
      }),
      { seed: 11 },
    );
  });

  it('are where they were read when the state is zero', () => {
    const still = { heaveMm: 0, pitch: 0, rearTravelMm: 0, frontTravelMm: 0, shockStrokeMm: 0 };
    expect(standing({ xMm: 530, heightMm: 740 }, still)).toEqual({ xMm: 530, heightMm: 740 });
  });

  it('sink in front and go forward when the nose goes down', () => {
    const nosedDown = { heaveMm: 0, pitch: 0.05, rearTravelMm: 0, frontTravelMm: 0, shockStrokeMm: 0 };
    const point = standing({ xMm: 1500, heightMm: 900 }, nosedDown);
    expect(point.heightMm).toBeLessThan(900);
    expect(point.xMm).toBeGreaterThan(1500 * Math.cos(0.05));
  });

  it('are drawn with x to the right and height upward, at one scale', () => {
    const frame = { pxPerMm: 0.25, left: 100, groundY: 400 };
    expect(onDrawing({ xMm: 400, heightMm: 200 }, frame)).toEqual({ x: 200, y: 350 });
  });
});

describe('the body drawn once and moved', () => {
  it('has every point where it stands on the ground', () => {
    const frame = { pxPerMm: 0.25, left: 100, groundY: 400 };
    fc.assert(
      fc.property(bodyPoint, stance, (point, state) => {
        const drawn = inBody(point, frame.pxPerMm);
        const { at, turned } = bodyStand(state, frame);
        const stands = onDrawing(standing(point, state), frame);
        expect(at.x + drawn.x * Math.cos(turned) - drawn.y * Math.sin(turned)).toBeCloseTo(stands.x, 9);
        expect(at.y + drawn.x * Math.sin(turned) + drawn.y * Math.cos(turned)).toBeCloseTo(stands.y, 9);
      }),
      { seed: 15 },
    );
  });
});

describe('axles in the body', () => {
  it('keep the length of the arm where the pivot is known', () => {
    fc.assert(
      fc.property(fc.double({ min: -60, max: 200, noNaN: true }), (rise) => {
        const pivot = { xMm: 545, heightMm: 352 };
        const axle = rearAxle(320, rise, pivot);
        expect(Math.hypot(pivot.xMm - axle.xMm, pivot.heightMm - axle.heightMm)).toBeCloseTo(
          Math.hypot(545, 352 - 320),
          6,
        );
        expect(axle.heightMm).toBeCloseTo(320 + rise, 9);
      }),
      { seed: 12 },
    );
  });

  it('rise straight up at the rear while the pivot is not known', () => {
    expect(rearAxle(320, 50, null)).toEqual({ xMm: 0, heightMm: 370 });
  });

  it('go back along the fork by the tangent of the rake', () => {
    const rake = Math.PI / 6;
    expect(frontAxle(1600, 300, 90, rake).xMm).toBeCloseTo(1600 - 90 / Math.sqrt(3), 9);
  });
});
