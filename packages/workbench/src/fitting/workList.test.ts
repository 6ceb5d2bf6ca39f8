import { readFileSync } from 'node:fs';
import type { JobDocument } from '@sagwright/records/schema';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unitsFor } from '../format/units.ts';
import { departures, documentedIn } from '../testing/documented.ts';
import { type Change, q, tourerWith } from '../testing/tourerJob.ts';
import { workListWords } from '../words/fitting.ts';
import type { RearWorkDocument, StepDocument } from './document.ts';
import { doesNotFit, workListOf } from './workList.ts';

/** The tourer with new shocks to be fitted, and some figures changed. */
function workWith(...changes: readonly Change[]): RearWorkDocument {
  return workListOf(tourerWith(['fitting', { rear: {} }], ...changes)).rear!;
}

const single: readonly Change[] = [
  ['machine.rear.shock.count', 1],
  ['setups.asFound.rear', { single: { spring: 'fitted', at: { reading: q(14.5, 'mm') } } }],
];
const byHose: Change = ['fitting.rear.reservoir', { kind: 'by hose', heads: 'flush' }];
const longer: Change = ['choice', { shockLength: q(5, 'mm') }];

function idsOf({ steps }: RearWorkDocument): readonly string[] {
  return steps.map(({ id }) => id);
}

function stepOf({ steps }: RearWorkDocument, id: string): StepDocument {
  return steps.find((step) => step.id === id)!;
}

/** Jobs in which something is being fitted. */
const arbitraryFitted: fc.Arbitrary<JobDocument> = arbitraryJob.filter(
  ({ fitting }) => fitting?.rear !== undefined,
);

describe('The work list of any job', () => {
  test('is a valid order: no step before one that it waits for, left and undone ones too', () => {
    fc.assert(
      fc.property(arbitraryFitted, (job) => {
        const work = workListOf(job).rear!;
        const ids = idsOf(work);
        expect(new Set(ids).size).toBe(ids.length);
        const left = work.left.flatMap(({ steps }) => steps);
        for (const order of [ids, left]) {
          for (const { id, after } of work.steps) {
            for (const { step } of after) {
              if (order.includes(id) && order.includes(step))
                expect(order.indexOf(step), `${step} before ${id}`).toBeLessThan(order.indexOf(id));
            }
          }
        }
        const stands = work.done.filter(({ standing }) => standing === 'stands').map(({ step }) => step);
        expect([...left, ...stands, ...work.lost.map(({ step }) => step)].sort()).toEqual([...ids].sort());
      }),
      { seed: 101, numRuns: 80 },
    );
  });

  test('is told as docs/worklist-json.md has it, and in words without a gap', () => {
    const page = readFileSync(new URL('../../../../docs/worklist-json.md', import.meta.url), 'utf8');
    const documented = documentedIn(page);
    const seen = new Set<string>();
    fc.assert(
      fc.property(arbitraryFitted, (job) => {
        const list = workListOf(job);
        expect(departures(documented, list, '`document`', 'list', seen)).toEqual([]);
        const words = JSON.stringify(workListWords(list.rear!, unitsFor('typed', job, '.')));
        expect(words).not.toMatch(/undefined|NaN|\[object/);
      }),
      { seed: 102, numRuns: 80 },
    );
    const all = [...documented.shapes].flatMap(([shape, fields]) =>
      [...fields.keys()].map((field) => `${shape}.${field}`),
    );
    expect(all.filter((field) => !seen.has(field))).toEqual([]);
  });

  test('lifts the machine once and sets it down once, whatever is fitted', () => {
    const all: readonly (readonly Change[])[] = [[], single, [byHose], [longer], [...single, byHose, longer]];
    for (const changes of all) {
      const work = workWith(...changes);
      expect(work.left.map(({ stance }) => stance)).toEqual(['wheels', 'air', 'wheels']);
      expect(work.changes).toBe(2);
    }
  });
});

describe('Common practice, no source', () => {
  const before = (work: RearWorkDocument, first: string, then: string): void => {
    const ids = idsOf(work);
    expect(ids).toContain(first);
    expect(ids.indexOf(first)).toBeLessThan(ids.indexOf(then));
  };

  test('what was found is written down before anything is loosened', () => {
    expect(idsOf(workWith())[0]).toBe('found');
  });

  test('of twins one is in before the other comes out; an only one has its arm carried', () => {
    before(workWith(), 'nuts-left', 'out-right');
    before(workWith(...single), 'carry', 'out');
    expect(idsOf(workWith())).not.toContain('carry');
  });

  test('a reservoir is in its clamp before the bracket is fixed, and its clamp is tight only after the whole travel', () => {
    const work = workWith(byHose);
    for (const side of ['left', 'right']) {
      before(work, `reservoir-${side}`, `bracket-${side}`);
      before(work, `bracket-${side}`, 'sweep');
      before(work, 'sweep', `clamp-${side}`);
    }
  });

  test('a lock nut is slack before the eye is turned, tight before its mark is looked at, all on the bench', () => {
    const work = workWith(longer);
    before(work, 'slacken-left', 'turn-left');
    before(work, 'lock-left', 'mark-left');
    before(work, 'mark-left', 'in-left');
    expect(idsOf(workWith(['choice', { shockLength: q(0, 'mm') }]))).not.toContain('turn-left');
  });

  test('rubber is tightened at ride height, also where nobody knows the bush; any other before it bears weight', () => {
    const work = workWith(['fitting.rear.top', { bush: 'spherical' }]);
    expect(stepOf(work, 'tighten-top-left').stance).toBe('air');
    before(work, 'tighten-top-left', 'sweep');
    expect(stepOf(work, 'tighten-bottom-left').stance).toBe('wheels');
    before(work, 'settle', 'tighten-bottom-left');
    const plain = workWith(['fitting.rear', { top: { bush: 'plain' }, bottom: { bush: 'plain' } }]);
    expect(idsOf(plain)).not.toContain('settle');
  });

  test('what is in the way comes off first, and goes back when all that it hides was checked', () => {
    const work = workWith(['fitting.rear.inTheWay', { bag: { name: 'left bag', order: 1 } }]);
    before(work, 'uncover-bag', 'loosen');
    before(work, 'witness-bottom-right', 'cover-bag');
    expect(stepOf(work, 'cover-bag').of).toBe('left bag');
  });
});

describe('If it was done already', () => {
  test('a bracket fixed too early comes off first, and is fixed again', () => {
    const work = workWith(byHose, ['fitting.rear.done', { found: {}, 'bracket-left': {} }]);
    expect(work.undo).toEqual(['bracket-left']);
    expect(work.done.find(({ step }) => step === 'bracket-left')!.because).toEqual([
      { step: 'reservoir-left', why: 'hose too stiff' },
    ]);
  });

  test('what was not written down before the bolts were loose is lost, and not asked for again', () => {
    const work = workWith(['fitting.rear.done', { loosen: {} }]);
    expect(work.lost).toEqual([{ step: 'found', by: 'loosen' }]);
    expect(work.left.flatMap(({ steps }) => steps)).not.toContain('found');
  });

  test('rubber tightened while it hung is slackened and tightened again', () => {
    const ids = idsOf(workWith());
    const done = [...ids.slice(0, ids.indexOf('sweep')), 'tighten-top-left'];
    const { undo, left } = workListOf(tourerWith(['fitting', { rear: {} }]), done).rear!;
    expect(undo).toEqual(['tighten-top-left']);
    expect(left.flatMap(({ steps }) => steps).slice(0, 2)).toEqual(['sweep', 'settle']);
  });

  test('done step by step in the order told, nothing is ever undone', () => {
    const job = tourerWith(['fitting', { rear: {} }], byHose, longer);
    const ids = idsOf(workListOf(job).rear!);
    for (const count of ids.keys()) {
      const { undo, lost, left } = workListOf(job, ids.slice(0, count)).rear!;
      expect([...undo, ...lost]).toEqual([]);
      expect(left.flatMap(({ steps }) => steps)).toHaveLength(ids.length - count);
    }
  });

  test('what is no step of this work is told apart in the job, and refused where it is asked', () => {
    const work = workWith(['fitting.rear.done', { 'bracket-left': {} }]);
    expect(work.unknown).toEqual(['bracket-left']);
    expect(() => workListOf(tourerWith(['fitting', { rear: {} }]), ['polish'])).toThrow('"polish"');
  });
});

describe('A torque', () => {
  const torqueWith = (torque: object) =>
    stepOf(workWith(['fitting.rear.torques', { topBolt: torque }]), 'tighten-top-left').torque!;

  test('is nobody else’s than the one that was read, in the unit of the manual', () => {
    expect(stepOf(workWith(), 'tighten-top-left').torque).toMatchObject({ value: null, state: 'no figure' });
    const read = torqueWith({ value: q(40, 'lbf·ft', 'manual'), page: 'p. 9', readBy: 'Tove' });
    expect(read).toMatchObject({ state: 'read once', value: { value: 40, unit: 'lbf·ft' } });
    // 1 lbf·ft = 4.4482216152605 N · 0.3048 m = 1.3558179483 N·m.
    expect(read.value!.si).toBeCloseTo(40 * 1.3558179483, 8);
  });

  test('is not to be worked by without its page and its reader', () => {
    const value = q(40, 'N·m', 'manual');
    const text = (torque: object): string => {
      const work = workWith(['fitting.rear.torques', { topBolt: torque }]);
      const words = workListWords(work, unitsFor('typed', tourerWith(), '.'));
      const step = words.phases.flatMap(({ steps }) => steps).find(({ id }) => id === 'tighten-top-left')!;
      return `${step.torque!.usable} ${step.torque!.text}`;
    };
    expect(text({ page: 'p. 9' })).toBe("false No figure. Read it from this machine's manual.");
    expect(text({ value, readBy: 'Tove' })).toMatch(/^false .*page/);
    expect(text({ value, page: 'p. 9' })).toMatch(/^false .*signed/);
    expect(text({ value, page: 'p. 9', readBy: 'Tove', checkedBy: 'Tove' })).toBe(
      'true 40 N·m: p. 9, read twice by Tove',
    );
    expect(torqueWith({ value, page: 'p. 9', readBy: 'Tove', checkedBy: 'Ruben' }).state).toBe('read by two');
  });
});

describe('An eye on its bolt', () => {
  const exactly = (value: number, unit = 'mm') => ({ ...q(value, unit), plusMinus: { value: 0, unit } });
  const sleeve = { inner: exactly(7 / 16, 'in'), outer: exactly(11.95), length: exactly(24.5) };
  const eye = { bush: 'plain', bore: exactly(12), bolt: exactly(7 / 16, 'in'), eyeWidth: exactly(24) };

  const verdicts = (mount: object): Record<string, string> => {
    const work = workWith(['fitting.rear.top', mount]);
    return Object.fromEntries(work.mounts[0]!.checks.map(({ of, verdict }) => [of, verdict]));
  };

  test('of 12 mm on a bolt of 7/16 in needs a sleeve with a wall of (12 − 11.1125)/2 mm', () => {
    const work = workWith(['fitting.rear.top', eye]);
    const [{ needs, needed }] = work.mounts as [RearWorkDocument['mounts'][number]];
    expect(needs!.wall.value).toBeCloseTo(0.44375e-3, 9);
    expect(needs!.longerThan).toBeCloseTo(0.024, 12);
    expect(needed).toEqual(['sleeve', 'clampWidth', 'thread']);
    expect(idsOf(work)).toContain('sleeve-top-left');
    expect(doesNotFit(work)).toBe(false);
  });

  test('fits with a sleeve that leaves float; a shorter one has the eye clamped; none is passed unmeasured', () => {
    expect(verdicts({ ...eye, sleeve })).toEqual({
      'bolt play': 'fits',
      'sleeve play': 'fits',
      'side float': 'fits',
    });
    const short = { ...eye, sleeve: { ...sleeve, length: exactly(24) } };
    expect(verdicts(short)['side float']).toBe('too little');
    expect(doesNotFit(workWith(['fitting.rear.top', short]))).toBe(true);
    expect(verdicts({ ...eye, sleeve: { ...sleeve, outer: exactly(12.1) } })['sleeve play']).toBe(
      'too little',
    );
    expect(verdicts({ ...eye, sleeve: { ...sleeve, outer: exactly(11.6) } })['sleeve play']).toBe('too much');
    expect(verdicts({ ...eye, sleeve, keep: exactly(1) })['side float']).toBe('too little');
    expect(workWith().mounts.every(({ checks }) => checks.length === 0)).toBe(true);
  });

  test('that does not fit keeps its sleeve and its shock out, and nothing else', () => {
    const short = { ...eye, sleeve: { ...sleeve, length: exactly(24) } };
    const stopped = workWith(['fitting.rear.top', short]).steps.flatMap(({ id, stops }) =>
      stops.length > 0 ? [`${id}: ${stops}`] : [],
    );
    expect([...stopped].sort()).toEqual([
      'in-left: top',
      'in-right: top',
      'sleeve-top-left: top',
      'sleeve-top-right: top',
    ]);
    expect(workWith(['fitting.rear.top', { ...eye, sleeve }]).steps.flatMap(({ stops }) => stops)).toEqual(
      [],
    );
  });

  test('is too close to call within what calipers tell', () => {
    // Two calipers, ± 0.1 mm each: √2 · 0.1 mm against a play of 0.05 mm.
    expect(
      verdicts({ ...eye, bore: q(12, 'mm'), sleeve: { ...sleeve, outer: q(11.95, 'mm') } }),
    ).toMatchObject({
      'sleeve play': 'close',
    });
  });

  test('asks for two diameters of thread in aluminium and one in steel', () => {
    const thread = (into: string) => ({ ...eye, bolt: exactly(10), thread: { into, engaged: exactly(15) } });
    expect(verdicts(thread('steel')).thread).toBe('fits');
    expect(verdicts(thread('aluminium')).thread).toBe('too little');
  });

  // Common practice, no source: more than 6 mm beside each other binds the shaft.
  test.each([
    [5, 'fits'],
    [6.5, 'too much'],
  ])('whose other lies %d mm beside it: %s', (offset, verdict) => {
    expect(workWith(['fitting.rear.mountOffset', exactly(offset)]).offset!.verdict).toBe(verdict);
  });
});

test('spacers bring a bracket out at least as far as it must stand', () => {
  const bracket = (offset: number, spacer: number) =>
    workWith([
      'fitting.rear.reservoir',
      { kind: 'by hose', offset: q(offset, 'mm'), spacer: q(spacer, 'mm') },
    ]).bracket!;
  expect(bracket(14, 4)).toMatchObject({ spacers: 4 });
  expect(bracket(12, 4)).toMatchObject({ spacers: 3 });
  expect(bracket(0.6, 0.2)).toMatchObject({ spacers: 3 });
  expect(workWith(byHose).bracket).toBeNull();
});

test('where nothing is fitted there is no list', () => {
  expect(workListOf(tourerWith()).rear).toBeNull();
});
