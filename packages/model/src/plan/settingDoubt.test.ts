import { describe, expect, test } from 'vitest';
import { settingInputs } from './settingDoubt.ts';

describe('What a counted setting brings of its own', () => {
  test('a lead or a click counts for each millimetre that it was counted over, on every strut', () => {
    const lead = { kind: 'in proportion', name: 'lead', deviation: 1e-5, value: 1.5e-3 } as const;
    // Derived: six turns of 1.5 mm are 9 mm; ∂(n·lead)/∂lead = n = 6.
    expect(settingInputs(lead, 'rear', { position: 0.009, reading: null, step: null }, 2)).toEqual([
      {
        name: 'lead',
        deviation: 1e-5,
        moves: [
          { parameter: 'rear.struts.0.preload', by: expect.closeTo(6, 12) },
          { parameter: 'rear.struts.1.preload', by: expect.closeTo(6, 12) },
        ],
      },
    ]);
  });

  test('at its loosest end nothing was counted, and a figure that is exact brings nothing', () => {
    const lead = { kind: 'in proportion', name: 'lead', deviation: 1e-5, value: 1.5e-3 } as const;
    expect(settingInputs(lead, 'rear', { position: 0, reading: null, step: null }, 1)).toEqual([]);
    const exact = { ...lead, deviation: 0 };
    expect(settingInputs(exact, 'rear', { position: 0.009, reading: null, step: null }, 1)).toEqual([]);
  });

  test('a cam brings the rise of the step that it is set to, and no other', () => {
    const cam = {
      kind: 'by step',
      steps: [0, 1, 2].map((step) => ({ name: `rise ${step}`, deviation: 3e-4 })),
    } as const;
    const inputs = settingInputs(cam, 'front', { position: 0.008, reading: null, step: 2 }, 1);
    expect(inputs).toEqual([
      { name: 'rise 2', deviation: 3e-4, moves: [{ parameter: 'front.struts.0.preload', by: 1 }] },
    ]);
  });

  test('what is read between two faces is where hands set it', () => {
    expect(settingInputs(undefined, 'rear', { position: 0.009, reading: 0.02, step: null }, 2)).toEqual([]);
  });
});
