import type { LimitOf, LimitResult } from '@sagwright/model/limits/limits';
import type { Reason, ReasonCode, SpringPlan } from '@sagwright/model/plan/answer';
import { arbitraryJob } from '@sagwright/records/testing/arbitraryJob';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Units, unitsChoices, unitsFor } from '../format/units.ts';
import type { NoteCode } from '../inputs/desk.ts';
import { type JobPlan, planJob } from '../path.ts';
import { resultJson } from '../result/result.ts';
import { lengthAdjusterWords } from '../shock/words.ts';
import { type Change, overloadedTourer, tourerThatNothingFits, tourerWith } from '../testing/tourerJob.ts';
import { assumptionWords, effectWords, narrowingWords } from './assumed.ts';
import { words } from './catalogue.ts';
import { closeLimitWords, limitsNotChecked, limitWords, nearestLimitWords, refusalWords } from './limits.ts';
import { fieldName } from './names.ts';
import { noteWords } from './notes.ts';
import { reasonLines, reasonWords } from './reasons.ts';
import { suggestionWords } from './suggestion.ts';
import { verdictOf, verdictWords } from './verdict.ts';

const tourer = plan(tourerWith());
const units = unitsFor('metric', tourer.job, '.');
const ends = ['rear', 'front'] as const;

describe('Every reason has its words', () => {
  // Figures in metres as the model gives them, and each number that the sentence must hold [mm].
  const samples = {
    fitted: [{}, []],
    reaches: [{ position: 0.0123, preload: 0.04, left: 0.0181 }, ['18.1 mm']],
    'only at the edge': [
      { position: 0.03, preload: 0.05, most: 0.022, short: 0.0017, travel: 0.0333 },
      ['33.3 mm'],
    ],
    'past the tightest': [
      { position: 0.03, preload: 0.05, most: 0.022, short: 0.0091, travel: 0.03 },
      ['9.1 mm'],
    ],
    'past the loosest': [
      { position: -0.01, preload: 0, most: 0.022, short: 0.0087, travel: 0.03 },
      ['8.7 mm'],
    ],
    'between steps': [{ position: 0.01, miss: 0.0021 }, ['2.1 mm', 'too tight']],
    'no spring wanted': [{ wanted: 0.0234 }, ['23.4 mm']],
    'no adjuster': [{ travel: 0.0402, low: 0.021, high: 0.0305 }, ['40.2 mm', '21.0 to 30.5 mm']],
    'pressure reaches': [{ pressure: 321_000 }, ['3.2 bar']],
    'pressure only at the edge': [
      { pressure: 821_000, end: 700_000, short: 121_000, travel: 0.0333 },
      ['8.2 bar', '7.0 bar', '33.3 mm'],
    ],
    'pressure past its most': [
      { pressure: 821_000, end: 700_000, short: 96_000, travel: 0.03 },
      ['8.2 bar', '7.0 bar', '1.0 bar'],
    ],
    'pressure past its least': [
      { pressure: -21_000, end: 0, short: 12_000, travel: 0.03 },
      ['0.1 bar', 'too much'],
    ],
    'target outside travel': [{ wanted: 0.09, travelMax: 0.0773 }, ['90.0 mm', '77.3 mm']],
    'no rest': [{ residual: 12.4 }, ['12 N']],
    'rests elsewhere': [{ travel: 0.0773, low: 0.021, high: 0.0305 }, ['77.3 mm', '21.0 to 30.5 mm']],
    'clear of coil bind': [{ room: 0.0044, keep: 0.002 }, ['4.4 mm']],
    'coil bind': [{ room: 0.0014, keep: 0.002 }, ['1.4 mm', '2.0 mm']],
    'coil bind not checked': [{}, ['free length']],
    'keeps preload': [{ left: 0.0112, keep: 0.003 }, ['11.2 mm']],
    'little preload': [{ left: 0.0011, keep: 0.003 }, ['1.1 mm', '3.0 mm']],
    'machine alone tops out': [{ preload: 0.04 }, ['alone']],
    'rests on rubber': [{ travel: 0.066 }, ['66.0 mm', 'rubber']],
    'rests on metal': [{ travel: 0.0773 }, ['77.3 mm', 'metal']],
    'rubber not checked': [{}, ['rubber']],
  } as const satisfies { readonly [C in ReasonCode]: readonly [Reason['figures'], readonly string[]] };

  test.each(Object.entries(samples))('"%s", with every number it needs', (code, [figures, numbers]) => {
    const reason = { code: code as ReasonCode, side: 'against', loadCase: 'all', figures } as const;
    const said = reasonWords(bare(tourer), 'rear', springOf(tourer, 'c1'), reason, units);
    expect(said.length).toBeGreaterThan(5);
    for (const number of numbers) expect(said).toContain(number);
  });

  test('one that misses by less than nothing is told the other way round', () => {
    const say = (code: ReasonCode, figures: Reason['figures']): string =>
      reasonWords(
        tourer,
        'rear',
        springOf(tourer, 'c1'),
        { code, side: 'against', loadCase: 'all', figures },
        units,
      );
    expect(say('coil bind', { room: -0.005, keep: 0.002 })).toContain('touch 5.0 mm before');
    expect(say('little preload', { left: -0.004, keep: 0.003 })).toContain('loose by 4.0 mm');
    expect(say('between steps', { position: 0.01, miss: -0.0021 })).toContain('2.1 mm of preload too loose');
  });
});

/** Six heights on a straight line of 0.9, the fourth read 10 mm long. */
const tapedPoints = Object.fromEntries(
  [0, 15, 30, 45, 60, 75].map((wheel, order) => [
    `p${order}`,
    {
      order,
      wheel: { value: wheel, unit: 'mm' as const },
      shock: { value: 320 - 0.9 * wheel + (order === 3 ? 10 : 0), unit: 'mm' as const },
    },
  ]),
);

/** The tourer with a taped rear, and an eye found 250 mm from where it was looked for. */
const withTape: JobPlan = {
  ...tourer,
  inputs: {
    ...tourer.inputs,
    places: {
      rows: [],
      radius: 0.318,
      near: { 'frame eye': { x: 0.3, height: 0.6 } },
      answer: {
        kind: 'points',
        points: { 'frame eye': { x: 0.15, height: 0.8 } },
        deviations: {},
        moves: [],
        misfits: [],
        checked: [],
        spare: 0,
      },
    },
  },
  job: {
    ...tourer.job,
    machine: {
      ...tourer.job.machine,
      rear: {
        ...tourer.job.machine.rear,
        travel: { kind: 'taped', points: tapedPoints },
      },
    },
  },
};

test('every note has its words', () => {
  const paths = {
    'rubber not known': 'machine.rear.shock.rubber',
    'rubber carried on': 'machine.rear.shock.rubber',
    'top-out not known': 'machine.front.fork.topOut',
    'axle path straight': 'machine.rear.pivot',
    'front path straight': 'machine.front.travel',
    'travel carried on': 'machine.rear.travel',
    'taped point left out': 'machine.rear.travel.points.p3',
    'points beyond shock': 'machine.rear.travel',
    'sideways not known': 'machine.rear.travel.sideways',
    'places only looked for': 'machine.rear.travel.tape',
    'place found elsewhere': 'machine.rear.travel.frameEye',
    'drive without pivot': 'machine.rear.drive',
    'one diameter for bore and seal': 'machine.front.fork.air',
    'spring volume not known': 'machine.front.fork.air',
    'stack read relaxed': 'machine.front.fork.stack',
    'bushes and pivot friction zero': 'machine.rear',
    'target set shipped': 'targetSet',
    'no target': 'loadCases.all.wanted.front',
    'fuel not known': 'machine.tank',
    'places not checked': 'loadCases.all.scales',
    'riding height control': 'machine.ridingHeightControl',
    'sides differ': 'setups.asFound.rear',
    'position not known': 'setups.asFound.rear',
    'locked as measured': 'machine.weighing.raised',
  } as const satisfies { readonly [C in NoteCode]: string };
  const said = Object.entries(paths).map(([code, path]) =>
    noteWords(withTape, { code: code as NoteCode, path }, units),
  );
  expect(new Set(said).size).toBe(said.length);
  for (const sentence of said) expect(sentence).toMatch(/^[A-Z].*\.$/);
  expect(said.join('\n')).toContain('left 14.5 mm and right 15.5 mm');
  expect(said.join('\n')).toContain('Taped point at wheel 45.0 mm: left out, it lies 10.0 mm off the curve');
});

test('every limit has its words, and an unknown one names the figure that is needed', () => {
  const unread = plan(
    tourerWith(
      ['machine.limits', {}],
      ['machine.places.carrier.limit', undefined],
      ['machine.rear.tyre', {}],
      ['machine.front.tyre', {}],
    ),
  );
  const kinds: { readonly [K in LimitOf['kind']]: LimitOf } = {
    gross: { kind: 'gross' },
    'rear axle': { kind: 'rear axle' },
    'front axle': { kind: 'front axle' },
    'rear tyre': { kind: 'rear tyre' },
    'front tyre': { kind: 'front tyre' },
    place: { kind: 'place', place: 'carrier' },
  };
  for (const of of Object.values(kinds)) {
    const known: LimitResult = {
      of,
      load: 361,
      plusMinus: 4.8,
      allowed: 365,
      allowedPlusMinus: 0,
      verdict: 'within its ±',
      over: -4,
    };
    expect(limitWords(tourer, known, units)).toMatch(/: 361 ± 5 of 365 kg$/);
    const unknown: LimitResult = { ...known, allowed: null, verdict: 'not checked', over: null };
    expect(limitWords(unread, unknown, units)).toMatch(/^Not checked, figure needed: [a-z].*\.$/);
  }
});

describe('A load that is too much', () => {
  const overloaded = plan(overloadedTourer());
  const all = overloaded.plan.loadCases.find(({ loadCase }) => loadCase === 'all')!;

  test('is refused in a sentence with the kilograms, the limit, and what helps', () => {
    const said = refusalWords(overloaded, all, units)!;
    expect(said).toMatch(
      /^Not planned: "both of us and the box" is .*\d+ ± \d+ kg over the rear axle rating/,
    );
    expect(said).toContain('at a full tank');
    expect(said).toContain('less on board');
    // 45 kg lie on a carrier that may bear 18: 27 kg too many, whatever the model finds on the axles.
    expect(said).toMatch(/27\.0 ± 0\.5 kg over the limit of the "carrier"/);
  });

  test('is refused alone: the other loads are planned', () => {
    const others = overloaded.plan.loadCases.filter((load) => load !== all);
    for (const load of others) expect(refusalWords(overloaded, load, units)).toBeNull();
  });

  test('says that it tips where it lies behind the wheels', () => {
    const behind = plan(tourerWith(['machine.places.box.at.x.value', -1900], ['things.box.mass.value', 300]));
    const load = behind.plan.loadCases.find(({ loadCase }) => loadCase === 'all')!;
    expect(refusalWords(behind, load, units)).toContain('tips the machine over its rear wheel');
  });
});

describe('The suggestion', () => {
  test('names the spring, why not the next, and what would change it', () => {
    const { headline, sentences, remedies } = suggestionWords(tourer, 'rear', units);
    expect(headline).toBe('Fit "C1", 24.5 N/mm, shelf C1');
    expect(sentences.join(' ')).toMatch(
      /"as delivered", the next softer, does not: "both of us and the box": needs/,
    );
    expect(sentences.join(' ')).toMatch(
      /kg less on the rear wheel in "both of us and the box", "as delivered" would do/,
    );
    expect(remedies).toEqual([]);
  });

  test('keeps the spring that is fitted where that is the one', () => {
    const { headline } = suggestionWords(tourer, 'front', units);
    expect(headline).toBe('Keep "fork springs", 10.5 N/mm');
  });

  test('where nothing fits, tells what would, in order of honesty', () => {
    const nothing = plan(tourerThatNothingFits());
    const { headline, remedies } = suggestionWords(nothing, 'rear', units);
    expect(headline).toBe('None of the rear springs listed reaches every load.');
    const kinds = remedies.map((remedy) => remedy.split(/[:,]/)[0]);
    expect(kinds).toEqual(['less on board', 'another damper']);
    const stronger = plan(
      tourerWith(
        ['springs.c1', undefined],
        ['springs.c2', undefined],
        ['springs.c3', undefined],
        ['springs.c4', undefined],
      ),
    );
    const rate = suggestionWords(stronger, 'rear', units).remedies.find((remedy) =>
      remedy.startsWith('another rate'),
    )!;
    expect(rate).toMatch(/\d+ to \d+ % stiffer than the fitted one/);
  });

  test('of a spring picked by hand says so, and what it would have been', () => {
    const picked = plan(tourerWith(['choice', { rear: 'c3' }]));
    const { headline, sentences } = suggestionWords(picked, 'rear', units);
    expect(headline).toBe('Picked by hand: "C3", 30.5 N/mm');
    expect(sentences[0]).toBe('Suggested would be "C1", 24.5 N/mm.');
  });

  test('where nothing is asked, says what is missing', () => {
    const headline = (...changes: readonly Change[]): string =>
      suggestionWords(plan(tourerWith(...changes)), 'rear', units).headline;
    expect(headline(['loadCases', {}])).toContain('No load is listed');
    const ids = ['work', 'trip', 'both', 'all'];
    expect(headline(...ids.map((id) => [`loadCases.${id}.share`, 0] as const))).toContain(
      'No load that is ridden',
    );
    const noFork = plan(tourerWith(['springs.fork', undefined], ['setups.asFound.front', undefined]));
    expect(suggestionWords(noFork, 'front', units).headline).toContain('No front springs are listed');
  });
});

test('a verdict says when the ± could turn it', () => {
  const of = (id: string) => verdictOf(tourer, springOf(tourer, id));
  for (const { spring, fits } of tourer.plan.rear.springs) {
    expect(of(spring).startsWith('fits')).toBe(fits);
    expect(Object.keys(words.verdicts)).toContain(of(spring));
  }
  const none = plan(tourerWith(['loadCases', {}]));
  expect(verdictOf(none, none.plan.rear.springs[0]!)).toBe('nothing asked of it');
});

test('the figure that would narrow the collar most is named with what it would bring', () => {
  const said = narrowingWords(tourer, 'rear', units)!;
  const [, to, from] = /± ([\d.]+) mm instead of ± ([\d.]+) mm/.exec(said)!;
  expect(Number(to)).toBeLessThan(Number(from));
  expect(said).toContain('"to work"');
});

describe('Of any job', () => {
  const choice = fc.constantFrom(...unitsChoices);

  test('every sentence is whole, and every figure of the job has a name', () => {
    fc.assert(
      fc.property(arbitraryJob, choice, (job, unitsChoice) => {
        const planned = planJob(job);
        if (!planned.ok) return;
        const said = everySentence(planned, unitsFor(unitsChoice, job, '.'));
        for (const sentence of said) {
          expect(sentence).not.toMatch(/undefined|null|NaN|Infinity|-0(?:\.0+)?(?![\d.])|\[object/);
          expect(sentence.trim()).not.toBe('');
        }
        for (const path of planned.inputs.figures.keys()) expect(fieldName(job, path)).not.toBe(path);
      }),
      { seed: 3, numRuns: 150 },
    );
  });
});

function everySentence(planned: JobPlan, shown: Units): readonly string[] {
  const assumptions = resultJson(planned).assumptions.filter(({ assumed }) => assumed === 'value');
  return [
    ...planned.plan.loadCases.flatMap((load) => [
      refusalWords(planned, load, shown) ?? '-',
      ...closeLimitWords(planned, load, shown),
    ]),
    nearestLimitWords(planned, shown) ?? '-',
    limitsNotChecked(planned) ?? '-',
    ...planned.inputs.notes.map((note) => noteWords(planned, note, shown)),
    ...assumptions.flatMap((each) => [
      assumptionWords(planned, each, shown),
      ...ends.map((end) => effectWords(planned, each, end, shown) ?? '-'),
    ]),
    ...ends.flatMap((end) => endSentences(planned, end, shown)),
    ...lengthAdjusterWords(planned, shown),
  ];
}

function endSentences(planned: JobPlan, end: 'rear' | 'front', shown: Units): readonly string[] {
  const { headline, sentences, remedies } = suggestionWords(planned, end, shown);
  return [
    headline,
    ...sentences,
    ...remedies,
    narrowingWords(planned, end, shown) ?? '-',
    ...planned.plan[end].springs.flatMap((spring) => {
      const lines = reasonLines(planned, end, spring, shown);
      return [
        verdictWords(planned, spring),
        ...lines.for,
        ...lines.against,
        ...lines.notChecked,
        ...spring.reasons.map((reason) => reasonWords(planned, end, spring, reason, shown)),
      ];
    }),
  ];
}

function plan(job: ReturnType<typeof tourerWith>): JobPlan {
  const planned = planJob(job);
  if (!planned.ok) throw new Error(planned.problems.map(({ message }) => message).join('\n'));
  return planned;
}

function springOf(planned: JobPlan, id: string): SpringPlan {
  return planned.plan.rear.springs.find(({ spring }) => spring === id)!;
}

/** The same plan without the springs' lengths, so that what is not checked has something to name. */
function bare(planned: JobPlan): JobPlan {
  const { question } = planned.inputs;
  const choices = question.rear.choices.map((choice) => ({ ...choice, freeLength: null, solidLength: null }));
  return {
    ...planned,
    inputs: { ...planned.inputs, question: { ...question, rear: { ...question.rear, choices } } },
  };
}
