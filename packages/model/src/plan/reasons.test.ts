import { describe, expect, test } from 'vitest';
import type { PointMass } from '../masses/pointMass.ts';
import { momentsOf } from '../masses/pointMass.ts';
import type { MachineSI } from '../statics/machine.ts';
import { prepare } from '../statics/prepared.ts';
import { carrying, choice, fineCollar, linear, rearQuestion, shares } from '../testing/collarQuestion.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import type { ReasonCode, SpringPlan } from './answer.ts';
import { demandAt } from './demand.ts';
import { plan } from './plan.ts';
import type { EndQuestion, LoadCaseSI, SpringChoiceSI } from './question.ts';
import { rulesOut } from './reasons.ts';

const two = carrying('two', [rider, passenger]);
const alone = carrying('alone', [rider]);

/** One spring of 28 N/mm, judged. */
function judged(
  rear: Partial<EndQuestion> = {},
  loads: readonly LoadCaseSI[] = [two],
  change: Partial<SpringChoiceSI> = {},
  machine: MachineSI = tourer(),
): SpringPlan {
  const only = choice('only', linear(28_000), change);
  const question = rearQuestion({ choices: [only], adjuster: fineCollar(0.03), ...rear }, loads, {}, machine);
  return plan(question).rear.springs[0]!;
}

function codes(spring: SpringPlan): readonly ReasonCode[] {
  return spring.reasons.map(({ code }) => code);
}

/** Where the collar must stand: F/k − s − p₀. */
function wayTo(things: readonly PointMass[], share: number): number {
  const prepared = prepare({ ...tourer(), load: momentsOf(things) });
  const answer = demandAt(prepared, 'rear', share * prepared.rearTravelMax);
  if (answer.kind !== 'demand') throw new Error(answer.kind);
  return answer.demand.springForce / 28_000 - answer.demand.stroke - 0.012;
}

describe('a spring', () => {
  test('that is fitted, reaches, keeps its preload and stays clear speaks for itself', () => {
    const lengths = { freeLength: 0.25, solidLength: 0.14 };
    const spring = judged({ keepPreload: 0.003, keepFromCoilBind: 0.002 }, [two], {
      fitted: true,
      ...lengths,
    });
    expect(codes(spring)).toEqual([
      'fitted',
      'reaches',
      'clear of coil bind',
      'keeps preload',
      'rubber not checked',
    ]);
    expect(spring.reasons.filter(rulesOut)).toEqual([]);
    expect(spring.fits).toBe(true);
    const [, reaches, clear, keeps] = spring.reasons;
    expect(reaches!.figures.position).toBeCloseTo(wayTo([rider, passenger], 0.4), 6);
    expect(reaches!.figures.left).toBeCloseTo(0.03 - wayTo([rider, passenger], 0.4), 6);
    // 250 − 140 − 69 mm of stroke, less the preload; set to 0.01 mm.
    const preload = 0.012 + wayTo([rider, passenger], 0.4);
    expect(clear!.figures.room).toBeCloseTo(0.041 - preload, 5);
    expect(keeps!.figures.left).toBeCloseTo(preload, 5);
  });

  test('whose lengths and rubber nobody knows is not checked for them, and fits all the same', () => {
    const spring = judged();
    expect(codes(spring)).toEqual([
      'reaches',
      'coil bind not checked',
      'keeps preload',
      'rubber not checked',
    ]);
    expect(spring.fits).toBe(true);
  });

  test.each<[string, number, ReasonCode]>([
    ['only at the loose part of its band', wayTo([rider, passenger], 0.4) - 0.0005, 'only at the edge'],
    ['too slack by far', wayTo([rider, passenger], 0.44) - 0.001, 'past the tightest'],
  ])('held %s is ruled out, by how much', (_, most, code) => {
    const spring = judged({ adjuster: fineCollar(most) });
    expect(spring.reasons[0]).toMatchObject({ code, side: 'against', loadCase: 'two' });
    expect(spring.reasons[0]!.figures.short).toBeCloseTo(code === 'only at the edge' ? 0.0005 : 0.001, 6);
    expect(spring.fits).toBe(false);
  });

  test('that is too stiff at the loosest is ruled out', () => {
    const spring = judged({}, [two], { preloadAtZero: 0.012 + wayTo([rider, passenger], 0.36) + 0.002 });
    expect(spring.reasons[0]).toMatchObject({ code: 'past the loosest', side: 'against' });
    expect(spring.reasons[0]!.figures.short).toBeCloseTo(0.002, 6);
  });

  test('between two steps of a cam is ruled out', () => {
    const way = wayTo([rider, passenger], 0.4);
    const cam = { kind: 'steps' as const, positions: [0, way - 0.008, way + 0.009] };
    expect(judged({ adjuster: cam }).reasons[0]).toMatchObject({ code: 'between steps', side: 'against' });
  });

  test('without an adjuster reaches where it lies in the band, and is ruled out where not', () => {
    const at = (share: number): number => wayTo([rider, passenger], share);
    const there = judged({ adjuster: null, found: [at(0.42), at(0.42)] });
    expect(there.reasons[0]).toMatchObject({ code: 'reaches', side: 'for' });
    const elsewhere = judged({ adjuster: null, found: [at(0.46), at(0.46)] });
    expect(elsewhere.reasons[0]).toMatchObject({ code: 'no adjuster', side: 'against' });
    expect([there.fits, elsewhere.fits]).toEqual([true, false]);
  });

  test('whose coils would come too near, or that goes loose at extension, is ruled out over all', () => {
    const preload = 0.012 + wayTo([rider, passenger], 0.4);
    const near = judged({ keepFromCoilBind: 0.002 }, [two], {
      freeLength: 0.25,
      solidLength: 0.25 - 0.069 - preload - 0.001,
    });
    expect(near.reasons.filter(rulesOut).map(({ code }) => code)).toEqual(['coil bind']);
    expect(near.fits).toBe(false);
    const loose = judged({ keepPreload: preload + 0.001 });
    expect(loose.reasons.filter(rulesOut).map(({ code }) => code)).toEqual(['little preload']);
    expect(loose.fits).toBe(false);
  });

  test('that lets the machine stand on a rubber is told so, and left to the technician', () => {
    const machine = tourer();
    const rubber = { start: 0.02, rate: 10_000, hardening: 0 };
    const struts = machine.rear.struts.map((strut) => ({ ...strut, rubber }));
    const spring = judged({}, [two], {}, { ...machine, rear: { ...machine.rear, struts } });
    expect(codes(spring)).toContain('rests on rubber');
    expect(codes(spring)).not.toContain('rubber not checked');
    expect(spring.fits).toBe(true);
  });

  test('that a load wants on the metal’s edge may stand on the metal when it is out of reach', () => {
    const spring = judged({ adjuster: fineCollar(0.0001) }, [{ ...two, share: 1 }], { preloadAtZero: -0.05 });
    expect(codes(spring)).toContain('rests on metal');
  });

  test('whose falling ratio makes the wanted place a knife’s edge is ruled out, though its collar gets there', () => {
    // A soft spring pressed far is all but a constant force F: at the wheel F·MR, and MR falls from 1.1 to 0.3, so that the
    // deeper the wheel stands the less holds it up. There is a balance at the aim, and no rest.
    const machine = tourer();
    const kinematics = { kind: 'quadratic', slope: 1.1, bend: -4 } as const;
    const falling = { ...machine, rear: { ...machine.rear, strokeMax: 0.07, kinematics } };
    const soft = { spring: linear(6_000) };
    const spring = judged({ adjuster: fineCollar(0.5) }, [two], soft, falling);
    expect(codes(spring)).toContain('reaches');
    const elsewhere = spring.reasons.find(({ code }) => code === 'rests elsewhere')!;
    const { travel, low, high } = elsewhere.figures;
    expect(travel! < low! || travel! > high!).toBe(true);
    expect(rulesOut(elsewhere)).toBe(true);
    expect(spring.fits).toBe(false);
  });

  test('so tight that the machine alone tops out is told so', () => {
    // Preload for two with little sag: more than the machine alone presses.
    const little = carrying('two', [rider, passenger], {
      wanted: { rear: shares(0.02, 0.03, 0.05), front: null },
    });
    const spring = judged({ adjuster: fineCollar(0.06) }, [little]);
    expect(codes(spring)).toContain('machine alone tops out');
    expect(spring.fits).toBe(true);
  });
});

describe('a load', () => {
  const tight = wayTo([rider, passenger], 0.4) + 0.002;

  test('that is only looked at rules nothing out, neither by reach nor by coils or preload', () => {
    const looked = { ...two, share: 0 };
    const short = judged({ adjuster: fineCollar(wayTo([rider], 0.4) + 0.001) }, [alone, looked]);
    expect(short.reasons.filter(rulesOut).map(({ loadCase }) => loadCase)).toEqual(['two']);
    expect(short.fits).toBe(true);
    // Room for the coils alone, not for two: the collar for two is 13 mm tighter.
    const solidLength = 0.25 - 0.069 - 0.012 - wayTo([rider], 0.4) - 0.005;
    const coils = judged({ adjuster: fineCollar(tight) }, [alone, looked], { freeLength: 0.25, solidLength });
    expect(coils.reasons.filter(rulesOut)).toEqual([]);
    expect(coils.fits).toBe(true);
    const ridden = judged({ adjuster: fineCollar(tight) }, [alone, two], { freeLength: 0.25, solidLength });
    expect(ridden.reasons.filter(rulesOut).map(({ code }) => code)).toEqual(['coil bind']);
  });

  test('that alone is looked at is judged, but nothing fits it', () => {
    const spring = judged({}, [{ ...two, share: 0 }]);
    expect(codes(spring)).toEqual([
      'reaches',
      'coil bind not checked',
      'keeps preload',
      'rubber not checked',
    ]);
    expect(spring.fits).toBe(false);
  });

  test('that asks for a sag outside the travel, or finds no rest, rules every spring out', () => {
    const deep = carrying('two', [rider], { wanted: { rear: shares(0.9, 1, 1.1), front: null } });
    expect(judged({}, [deep]).reasons[0]).toMatchObject({ code: 'target outside travel', side: 'against' });
    const far = carrying('far', [{ mass: 300, x: -1.5, height: 1 }]);
    expect(judged({}, [far]).reasons[0]).toMatchObject({ code: 'no rest', side: 'against' });
    expect(judged({}, [far]).reasons[0]!.figures.residual).toBeGreaterThan(0);
    expect([judged({}, [deep]).fits, judged({}, [far]).fits]).toEqual([false, false]);
  });

  test('that is held up by gas alone asks for no spring', () => {
    const machine = tourer();
    const gas = { area: 1e-3, pressure: 2e6, volume: 1, exponent: 1 };
    const struts = machine.rear.struts.map((strut) => ({ ...strut, gas }));
    const spring = judged({}, [two], {}, { ...machine, rear: { ...machine.rear, struts } });
    expect(spring.reasons[0]).toMatchObject({ code: 'no spring wanted', side: 'against' });
  });
});
