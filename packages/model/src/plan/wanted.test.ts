import { describe, expect, test } from 'vitest';
import type { StrutSI } from '../dampers/strut.ts';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { levelMachine, plainStrut } from '../testing/levelMachine.ts';
import { type SagSI, type WantedSI, wantedTravel } from './wanted.ts';

/** Its wheels hang at 2 · 1.27734 mm: worked out in statics/hanging.test.ts. */
const hung: StrutSI = { ...plainStrut(40_000, 0.005), topOut: { rate: 60_000, length: 0.012 } };
const HANGING = 2 * 0.00127734;

function travel(sag: SagSI, from: WantedSI['from'], along: WantedSI['along'], machine: MachineSI): number {
  return wantedTravel(prepare(machine), 'rear', { low: sag, aim: sag, high: sag, from, along }, sag);
}

describe('a wanted sag', () => {
  const machine = levelMachine(hung);
  const length: SagSI = { kind: 'length', length: 0.03 };
  const share: SagSI = { kind: 'share', share: 0.3 };

  test('at the wheel from the stop is that travel, or that share of the whole', () => {
    expect(travel(length, 'stop', 'wheel', machine)).toBeCloseTo(0.03, 12);
    expect(travel(share, 'stop', 'wheel', machine)).toBeCloseTo(0.3 * 0.2, 12);
  });

  test('counted from hanging starts where the wheel hangs', () => {
    expect(travel(length, 'hanging', 'wheel', machine)).toBeCloseTo(HANGING + 0.03, 9);
    expect(travel(share, 'hanging', 'wheel', machine)).toBeCloseTo(HANGING + 0.06, 9);
  });

  test('read along the damper is brought to the wheel', () => {
    expect(travel(length, 'stop', 'stroke', machine)).toBeCloseTo(0.06, 12);
    expect(travel(share, 'stop', 'stroke', machine)).toBeCloseTo(0.06, 12);
  });

  test('along the damper from hanging counts its stroke from there, also where the ratio changes', () => {
    const rear = { ...machine.rear, kinematics: { kind: 'quadratic' as const, slope: 0.5, bend: 0.5 } };
    const rising = { ...machine, rear };
    const prepared = prepare(rising);
    const start = travel({ kind: 'length', length: 0 }, 'hanging', 'wheel', rising);
    const z = travel(length, 'hanging', 'stroke', rising);
    const stroke = (at: number): number => 0.5 * at + 0.5 * at * at;
    expect(start).toBeGreaterThan(0);
    expect(stroke(z) - stroke(start)).toBeCloseTo(0.03, 12);
    expect(z).toBeLessThan(prepared.rearTravelMax);
  });

  test('along the damper past its whole stroke lies past the whole travel, also where the ratio runs out there', () => {
    // s = 0.9 z − 2 z² never gets past 0.81/8 = 101 mm.
    const kinematics = { kind: 'quadratic' as const, slope: 0.9, bend: -2 };
    const falling = { ...machine, rear: { ...machine.rear, strokeMax: 0.1, kinematics } };
    const { rearTravelMax } = prepare(falling);
    const asked = travel({ kind: 'length', length: 0.15 }, 'stop', 'stroke', falling);
    expect(asked).toBeCloseTo(1.5 * rearTravelMax, 12);
    expect(travel({ kind: 'length', length: 0.0999999 }, 'stop', 'stroke', falling)).toBeLessThan(
      rearTravelMax,
    );
  });
});
