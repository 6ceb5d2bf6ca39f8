import { describe, expect, test } from 'vitest';
import { stated } from '../limits/limits.ts';
import { prepare } from '../statics/prepared.ts';
import { restOf } from '../statics/rest.ts';
import { carrying, choice, fineCollar, linear, rearQuestion, shares } from '../testing/collarQuestion.ts';
import { passenger, rider, tourer } from '../testing/tourer.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import { plan } from './plan.ts';
import type { LoadCaseSI, PlanQuestion } from './question.ts';
import { asPlanned } from './together.ts';

const wanted = { rear: shares(0.36, 0.4, 0.44), front: shares(0.3, 0.35, 0.4) };
const loads: readonly LoadCaseSI[] = [carrying('two', [rider, passenger], { wanted })];
const caps = { adjuster: fineCollar(0.06), found: null, keepPreload: 0, keepFromCoilBind: 0 };

function question(change: Partial<PlanQuestion> = {}): PlanQuestion {
  const rear = [
    choice('28', linear(28_000)),
    choice('32', linear(32_000)),
    choice('26', linear(26_000), { fitted: true }),
  ];
  const front = [choice('10.5', linear(10_500)), choice('12', linear(12_000))];
  return rearQuestion({ choices: rear, adjuster: fineCollar(0.03) }, loads, {
    front: { ...caps, choices: front },
    ...change,
  });
}

/** The tourer set by hand: preload and rate at both ends. */
function restSet(rear: readonly [number, number], front: readonly [number, number]) {
  const machine = tourer();
  const end = (name: 'rear' | 'front', [rate, preload]: readonly [number, number]) => ({
    ...machine[name],
    struts: machine[name].struts.map((strut) => ({ ...strut, spring: linear(rate), preload })),
  });
  const answer = restOf(
    prepare({ ...machine, load: loads[0]!.load, rear: end('rear', rear), front: end('front', front) }),
  );
  if (answer.kind !== 'rest') throw new Error(answer.kind);
  return answer.rest;
}

describe('both ends planned at once', () => {
  const planned = plan(question());
  const [load] = planned.planned.loadCases;

  test('have the suggested springs, where somebody picked none', () => {
    const suggested = [planned.rear.suggestion, planned.front.suggestion].map((suggestion) =>
      suggestion.kind === 'spring' ? suggestion.spring : null,
    );
    expect(planned.planned.rear).toEqual({ spring: suggested[0], by: 'suggestion' });
    expect(planned.planned.front).toEqual({ spring: suggested[1], by: 'suggestion' });
  });

  test('stand where the machine rests with both set', () => {
    const preload = (setting: { position: number } | null): number => 0.012 + setting!.position;
    const rest = restSet(
      [Number(planned.planned.rear.spring) * 1000, preload(load!.rear)],
      [Number(planned.planned.front.spring) * 1000, preload(load!.front)],
    );
    expect(load!.stand.travel!.rear.value).toBeCloseTo(rest.rear.travel, 10);
    expect(load!.stand.travel!.front.value).toBeCloseTo(rest.front.travel, 10);
  });

  test('take the picked spring instead, at its own setting', () => {
    const picked = plan(question({ choice: { rear: '32' } })).planned;
    expect(picked.rear).toEqual({ spring: '32', by: 'choice' });
    const cell = planned.rear.springs.find(({ spring }) => spring === '32')!.cells[0]!;
    if (cell.kind !== 'planned') throw new Error(cell.kind);
    expect(picked.loadCases[0]!.rear).toEqual(cell.cell.setting);
  });

  test('leave an end as it was found where nothing is planned there', () => {
    const { planned: rearOnly } = plan(question({ front: { ...caps, choices: [] } }));
    expect(rearOnly.front).toEqual({ spring: null, by: 'as found' });
    expect(rearOnly.loadCases[0]!.front).toBeNull();
    const rest = restSet(
      [Number(rearOnly.rear.spring) * 1000, 0.012 + rearOnly.loadCases[0]!.rear!.position],
      [10_500, 0.026],
    );
    expect(rearOnly.loadCases[0]!.stand.travel!.front.value).toBeCloseTo(rest.front.travel, 10);
  });

  test('have the ± of the planned springs, not of those that were found', () => {
    const rate = (name: string, end: string): UncertainInput => ({
      name,
      deviation: 800,
      moves: [0, 1].map((i) => ({ parameter: `${end}.struts.${i}.spring.rate`, by: 1 })),
    });
    const plusMinus = (change: Partial<PlanQuestion>): number =>
      plan(question(change)).planned.loadCases[0]!.stand.travel!.rear.plusMinus!;
    expect(plusMinus({ inputs: [rate('as found', 'rear')] })).toBe(0);
    const rear = question().rear;
    const choices = rear.choices.map((each) => ({ ...each, inputs: [rate('marked', 'rear')] }));
    expect(plusMinus({ rear: { ...rear, choices } })).toBeGreaterThan(0);
    expect(
      plusMinus({ inputs: [rate('as found', 'front')], front: { ...caps, choices: [] } }),
    ).toBeGreaterThan(0);
  });

  test('of a load that is not planned stand as found, with the ± of what was found', () => {
    const rate: UncertainInput = {
      name: 'as found',
      deviation: 800,
      moves: [0, 1].map((i) => ({ parameter: `rear.struts.${i}.spring.rate`, by: 1 })),
    };
    const heavy = carrying('heavy', [rider, passenger], { wanted });
    const limits = { gross: stated(100), frontAxle: null, rearAxle: null, frontTyre: null, rearTyre: null };
    const asked = question({ limits, inputs: [rate], loadCases: [heavy] });
    const answer = plan(asked);
    const load = answer.planned.loadCases[0]!;
    expect(answer.loadCases[0]!.refused).toBe(true);
    expect([load.rear, load.front]).toEqual([null, null]);
    expect(load.stand.travel).toEqual(answer.loadCases[0]!.asFound.travel);
    expect(load.stand.travel!.rear.plusMinus).toBeGreaterThan(0);
    const { machine, rear } = asPlanned(asked, answer.rear, answer.front, heavy);
    expect([machine, rear]).toEqual([asked.machine, null]);
  });
});
