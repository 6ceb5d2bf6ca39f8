import { describe, expect, test } from 'vitest';
import { planJob } from '../path.ts';
import { tourerWith } from '../testing/tourerJob.ts';

describe('A machine that is not planned', () => {
  test.each([
    ['sidecar', /third wheel/],
    ['trike', /one plane/],
    ['rigid rear', /no spring/],
  ])('%s is refused at its field, with the reason', (kind, reason) => {
    const planned = planJob(tourerWith(['machine.kind', kind]));
    if (planned.ok) throw new Error('planned');
    expect(planned.problems).toMatchObject([{ path: 'machine.kind', code: 'out of scope' }]);
    expect(planned.problems[0]!.message).toMatch(reason);
  });

  test('is refused before anything else is said of it', () => {
    const impossible = { gap: { value: 10, unit: 'mm' }, springVolume: { value: 200, unit: 'ml' } };
    const fork = ['machine.front.fork.air', impossible] as const;
    const alone = planJob(tourerWith(fork));
    expect(alone.ok ? [] : alone.problems.map(({ path }) => path)).toEqual(['machine.front.fork.air.gap']);
    const both = planJob(tourerWith(fork, ['machine.kind', 'trike']));
    expect(both.ok ? [] : both.problems.map(({ path }) => path)).toEqual(['machine.kind']);
  });
});

describe('A machine that is planned with a caution', () => {
  test.each(['self-levelling', 'electronic'])('%s: the caution is a note of the plan', (control) => {
    const planned = planJob(tourerWith(['machine.ridingHeightControl', control]));
    if (!planned.ok) throw new Error('not planned');
    expect(planned.inputs.notes).toContainEqual({
      code: 'riding height control',
      path: 'machine.ridingHeightControl',
    });
  });

  test('without either there is none', () => {
    const planned = planJob(tourerWith(['machine.ridingHeightControl', 'none']));
    if (!planned.ok) throw new Error('not planned');
    expect(planned.inputs.notes.map(({ code }) => code)).not.toContain('riding height control');
  });
});
