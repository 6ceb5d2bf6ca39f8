import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Figure, passengerFigure, riderFigure, seatUnder } from './people.ts';

const massCentre = fc.record({
  xMm: fc.integer({ min: 450, max: 700 }),
  heightMm: fc.integer({ min: 900, max: 1150 }),
});
const grip = fc.tuple(fc.integer({ min: 900, max: 1350 }), fc.integer({ min: 950, max: 1200 }));

function bone(a: readonly [number, number], b: readonly [number, number]): number {
  return Math.hypot(a[0] - b[0], a[1] - b[1]);
}

function finite(figure: Figure): boolean {
  return Object.values(figure).flat().every(Number.isFinite);
}

describe('a seated figure', () => {
  it('keeps its bones, wherever the bar is', () => {
    fc.assert(
      fc.property(massCentre, grip, (centre, hands) => {
        const figure = riderFigure(centre, {
          grip: hands,
          board: [930, 277],
          tail: [-150, 800],
          passengerSeatMm: 810,
        });
        expect(finite(figure)).toBe(true);
        expect(bone(figure.hip, figure.knee)).toBeCloseTo(430, 6);
        expect(bone(figure.knee, figure.ankle)).toBeCloseTo(430, 6);
        expect(bone(figure.elbow, figure.hand)).toBeCloseTo(300, 6);
      }),
      { seed: 81 },
    );
  });

  it('has its knees forward and its mass centre within its trunk', () => {
    fc.assert(
      fc.property(massCentre, (centre) => {
        const figure = passengerFigure(centre);
        expect(figure.knee[0]).toBeGreaterThan(figure.hip[0]);
        expect(centre.heightMm).toBeGreaterThan(figure.hip[1]);
        expect(centre.heightMm).toBeLessThan(figure.neck[1]);
        expect(Math.abs(centre.xMm - figure.hip[0])).toBeLessThan(110);
        expect(seatUnder(centre)).toBeLessThan(figure.hip[1]);
      }),
      { seed: 82 },
    );
  });
});
