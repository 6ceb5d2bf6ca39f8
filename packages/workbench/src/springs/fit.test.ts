import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { planJob } from '../path.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { fitDocument } from './fit.ts';
import { fitSentences } from './fitWords.ts';

const wide = (value: number, plusMinus: number) => ({
  ...q(value, 'mm'),
  plusMinus: { value: plusMinus, unit: 'mm' },
});

/** Room of 236 ± 1 mm at the loosest reading, 22 mm of range, 69 ± 1 mm of stroke; the spring 262 ± 1 mm free, 140 ± 1 mm solid. */
const known: readonly Change[] = [
  ['machine.rear.shock.adjuster.springLength.at', wide(8, 0)],
  ['machine.rear.shock.adjuster.springLength.length', wide(236, 1)],
  ['machine.rear.shock.stroke', wide(69, 1)],
  ['springs.c1.freeLength', wide(262, 1)],
  ['springs.c1.solidLength', wide(140, 1)],
];

function planOf(...changes: readonly Change[]) {
  const planned = planJob(tourerWith(...known, ...changes));
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join(' '));
  return planned;
}

const fitOf = (...changes: readonly Change[]) => fitDocument(planOf(...changes), 'rear', 'c1')!;

const said = (...changes: readonly Change[]): string => {
  const planned = planOf(...changes);
  return fitSentences(planned, 'rear', 'c1', unitsFor('metric', planned.job, '.')).join(' ');
};

describe("A rear spring's fit", () => {
  test('tells preload and length at both ends of the adjuster', () => {
    const { loosest, tightest } = fitOf();
    expect(loosest.preload.value * 1000).toBeCloseTo(262 - 236, 9);
    expect(loosest.preload.plusMinus! * 1000).toBeCloseTo(Math.SQRT2, 6);
    expect(loosest.length!.value * 1000).toBeCloseTo(236, 9);
    // Its own free length cancels where the installed one was read.
    expect(loosest.length!.plusMinus! * 1000).toBeCloseTo(1, 6);
    expect(tightest.preload.value * 1000).toBeCloseTo(26 + 22, 9);
    expect(tightest.length!.value * 1000).toBeCloseTo(214, 9);
  });

  test('at full bump and its tightest leaves the installed length less solid length and stroke, and 2 mm kept', () => {
    const { coilBind } = fitOf();
    expect(coilBind.room!.value * 1000).toBeCloseTo(214 - 140 - 69 - 2, 9);
    expect(coilBind.room!.plusMinus! * 1000).toBeCloseTo(Math.sqrt(3), 6);
    expect(coilBind.verdict).toBe('within');
    expect(fitOf(['springs.c1.solidLength', wide(141.5, 1)]).coilBind.verdict).toBe('within its ±');
    expect(fitOf(['springs.c1.solidLength', wide(150, 1)]).coilBind.verdict).toBe('over');
  });

  test('is not checked where a figure is needed, which is named', () => {
    const { around, coilBind } = fitOf(['springs.c1.solidLength', undefined]);
    expect(coilBind).toEqual({ room: null, verdict: 'not checked', needs: ['springs.c1.solidLength'] });
    expect(around.needs).toEqual(['springs.c1.inside', 'machine.rear.shock.springOver']);
    expect(said(['springs.c1.solidLength', undefined])).toContain('not checked, figure needed');
  });

  test('goes over the body where it is wider inside, and only then', () => {
    const over: Change = ['machine.rear.shock.springOver', wide(55, 0.3)];
    const around = (inside: number) => fitOf(over, ['springs.c1.inside', wide(inside, 0.4)]).around;
    expect(around(58).room!.value * 1000).toBeCloseTo(3, 9);
    expect(around(58).room!.plusMinus! * 1000).toBeCloseTo(0.5, 6);
    expect(around(58).verdict).toBe('within');
    expect(around(55.2).verdict).toBe('within its ±');
    expect(around(54).verdict).toBe('over');
    expect(said(over, ['springs.c1.inside', wide(54, 0.4)])).toContain('does not go over the body');
  });

  test('has its inside from its coil where that was measured: mean diameter less the wire', () => {
    const coil = {
      kind: 'coil',
      wire: wide(9, 0.1),
      mean: wide(66, 0.3),
      coils: 9,
      ends: 'closed ground',
      material: 'chrome silicon',
    };
    const { around } = fitOf(['machine.rear.shock.springOver', wide(55, 0)], ['springs.c1.rate', coil]);
    expect(around.room!.value * 1000).toBeCloseTo(66 - 9 - 55, 9);
    expect(around.room!.plusMinus! * 1000).toBeCloseTo(Math.hypot(0.3, 0.1), 6);
  });

  test('on a spacer has so much more preload, and so much less room before its coils touch', () => {
    const spacer: Change = ['springs.c1.spacer', wide(5, 0.2)];
    const [with5, without] = [fitOf(spacer), fitOf()];
    expect((with5.loosest.preload.value - without.loosest.preload.value) * 1000).toBeCloseTo(5, 9);
    expect((with5.coilBind.room!.value - without.coilBind.room!.value) * 1000).toBeCloseTo(-5, 9);
    expect(with5.loosest.preload.plusMinus! * 1000).toBeCloseTo(Math.hypot(1, 1, 0.2), 6);
    expect(said(spacer)).toContain('stands on a spacer of 5.0');
  });

  test('is read of the fitted spring on its own spacer: that changes nothing of it, and the others stand on theirs', () => {
    const fitted = (id: string, ...changes: readonly Change[]): number =>
      fitDocument(planOf(...changes), 'rear', id)!.loosest.preload.value * 1000;
    const spacer: Change = ['springs.fitted.spacer', wide(4, 0)];
    expect(fitted('fitted', spacer)).toBeCloseTo(fitted('fitted'), 9);
    // The seats lie 4 mm further apart than its installed length says.
    expect(fitted('c1', spacer)).toBeCloseTo(fitted('c1') - 4, 9);
  });

  test('hangs loose at the loosest where it is shorter than the room, and then needs no compressor', () => {
    expect(fitOf().atLoosest).toBe('held');
    expect(said()).toContain('spring compressor');
    const short: Change = ['springs.c1.freeLength', wide(230, 1)];
    expect(fitOf(short).atLoosest).toBe('loose');
    expect(fitOf(short).loosest.length!.value * 1000).toBeCloseTo(230, 9);
    expect(said(short)).toContain('hangs loose by 6');
    expect(fitOf(['springs.c1.freeLength', wide(236.5, 1)]).atLoosest).toBe('within its ±');
  });

  test('is not told of a fork spring', () => {
    expect(fitDocument(planOf(), 'front', 'fork')).toBeNull();
  });
});
