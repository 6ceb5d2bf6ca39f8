import type { Attitude } from '@sagwright/model/attitude/attitude';
import type { Figure, Stand } from '@sagwright/model/plan/answer';
import type { EndRest } from '@sagwright/model/statics/rest';
import type { AttitudeChange, Band, SagDocument, StandingDocument } from './document.ts';

/** How the machine stands at both ends. */
export function standingOf({ answer, attitude, travel, band, loads }: Stand): StandingDocument {
  if (answer.kind === 'tips') return answer;
  if (answer.kind === 'no rest') return { kind: 'no rest', residual: answer.residual };
  const { rear, front } = answer.rest;
  return {
    kind: 'rest',
    rear: sagOf(rear, travel?.rear.plusMinus ?? null, band?.rear ?? null),
    front: sagOf(front, travel?.front.plusMinus ?? null, band?.front ?? null),
    attitude,
    axleLoads: loads,
  };
}

export function sagOf(rest: EndRest, plusMinus: Figure['plusMinus'], band: Band | null): SagDocument {
  const { travel, travelMax, hangingTravel, standing } = rest;
  return {
    travel: { value: travel, plusMinus },
    sag: { value: travel - hangingTravel, plusMinus },
    share: travel / travelMax,
    band,
    standing,
  };
}

/** Each part of the attitude against before; null where either is not known. */
export function attitudeChange(now: Attitude | null, before: Attitude | null): AttitudeChange | null {
  if (now === null || before === null) return null;
  const change = (key: keyof Attitude): number | null => {
    const [a, b] = [now[key], before[key]];
    return a === null || b === null ? null : a - b;
  };
  return {
    pitch: change('pitch'),
    rake: change('rake'),
    groundTrail: change('groundTrail'),
    normalTrail: change('normalTrail'),
    wheelbase: change('wheelbase'),
    seatHeight: change('seatHeight'),
  };
}
