import type { Planned } from '@sagwright/model/plan/answer';
import { gaugeAt } from '@sagwright/model/plan/pressure';
import { asChosen } from '@sagwright/model/plan/question';
import { damperAt } from '@sagwright/model/rear/wheelMotion';
import { ATMOSPHERE } from '@sagwright/model/statics/machine';
import type { JobPlan } from '../path.ts';
import type { PressureDocument } from './document.ts';

/** The pressure that a cell of the rear plans, as a gauge reads it; null where its shock has no air that is set. */
export function pressureOf({ inputs }: JobPlan, { pressure, set }: Planned): PressureDocument | null {
  if (pressure === undefined) return null;
  const { rear, geometry } = asChosen(inputs.question).machine;
  const air = rear.struts[0]!.air!;
  const at = (stroke: number | null): number | null =>
    stroke === null || !pressure.isPlanned ? null : gaugeAt(air, pressure.set, stroke);
  const { value, plusMinus } = pressure.aim;
  return {
    aim: { value: value - ATMOSPHERE, plusMinus },
    least: pressure.least - ATMOSPHERE,
    most: pressure.most - ATMOSPHERE,
    reach: pressure.reach,
    set: {
      fullyOut: pressure.set - ATMOSPHERE,
      alone: at(set.alone === null ? null : strokeAt(set.alone.travel.value)),
      laden: at(set.rest?.rear.stroke ?? null),
    },
    isPlanned: pressure.isPlanned,
    contributions: pressure.contributions,
  };

  function strokeAt(travel: number): number {
    const damper = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
    damperAt(rear, geometry.rake, travel, damper);
    return damper.stroke;
  }
}
