import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StrutSI } from '../dampers/strut.ts';
import { strutAt } from '../statics/endAt.ts';
import { ATMOSPHERE } from '../statics/machine.ts';
import { gaugeAt, pressureFor } from './pressure.ts';

const strut: StrutSI = {
  spring: { kind: 'linear', rate: 30_000 },
  preload: 0.01,
  gas: null,
  air: { area: 1e-3, pressure: 3e5, volume: 2e-4, exponent: 1 },
  rubber: null,
  topOut: null,
  friction: 0,
};

/** Force of coil and air together at a stroke [N]. */
function force(each: StrutSI, stroke: number): number {
  const out = { force: 0, rate: 0 };
  strutAt(each, stroke, out);
  return out.force;
}

/** What a demand asks of the coil, the air as it is, so that both bear `wanted` [N]. */
function askedOfCoil(each: StrutSI, wanted: number, stroke: number): number {
  const airAlone = force({ ...each, spring: { kind: 'none' } }, stroke);
  return wanted - airAlone;
}

describe('The pressure that answers a demand', () => {
  test('by hand: no coil, 1000 N on 10 cm² at a stroke that halves 200 ml', () => {
    const alone: StrutSI = { ...strut, spring: { kind: 'none' } };
    // Derived: at V = 100 ml the air must stand 1000 N/1e-3 m² = 1 MPa above the atmosphere; fully out, at 200 ml, at half of that absolute.
    const pressure = pressureFor([alone], askedOfCoil(alone, 1000, 0.1), 0.1);
    expect(pressure).toBeCloseTo((1e6 + ATMOSPHERE) / 2, 6);
    expect(gaugeAt(alone.air!, pressure, 0.1)).toBeCloseTo(1e6, 6);
  });

  test('put into the strut, it bears what was asked, whatever the air was before', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 200, max: 8000, noNaN: true }),
        fc.double({ min: 0, max: 0.15, noNaN: true }),
        fc.double({ min: 1e5, max: 1e6, noNaN: true }),
        (wanted, stroke, before) => {
          const found = { ...strut, air: { ...strut.air!, pressure: before } };
          const pressure = pressureFor([found], askedOfCoil(found, wanted, stroke), stroke);
          expect(force({ ...found, air: { ...found.air, pressure } }, stroke)).toBeCloseTo(wanted, 6);
        },
      ),
      { seed: 31 },
    );
  });

  test('more preload on the coil never asks for more pressure', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 0.03, noNaN: true }),
        fc.double({ min: 0, max: 0.1, noNaN: true }),
        (more, stroke) => {
          const tighter = { ...strut, preload: strut.preload + more };
          expect(pressureFor([tighter], 2000, stroke)).toBeLessThanOrEqual(
            pressureFor([strut], 2000, stroke),
          );
        },
      ),
      { seed: 32 },
    );
  });

  test('a strut without air has none: a broken contract', () => {
    const { air: _, ...bare } = strut;
    expect(() => pressureFor([bare], 100, 0.01)).toThrow(RangeError);
  });
});
