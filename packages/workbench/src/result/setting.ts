import { type AdjusterSetting, rangeOf, turnsBetween } from '@sagwright/model/plan/adjuster';
import type { SpringPlan } from '@sagwright/model/plan/answer';
import type { Adjuster } from '@sagwright/records/schema/adjusters';
import { adjusterAt } from '@sagwright/records/schema/machine';
import { siOf } from '@sagwright/records/schema/quantity';
import type { EndSetting } from '@sagwright/records/schema/setups';
import { quarter } from '../format/turns.ts';
import type { Strut } from '../inputs/sides.ts';
import type { JobPlan } from '../path.ts';
import type { SettingAt, SettingDocument } from './document.ts';
import type { End } from './inView.ts';

/** The adjuster of an end as the job describes it. */
export function adjusterOf(planned: JobPlan, end: End): Adjuster | undefined {
  return adjusterAt(planned.job.machine, end);
}

/** Where an adjuster is set for one load, and how it gets there from as found and from the other loads' settings. */
export function settingDocument(
  planned: JobPlan,
  end: End,
  spring: SpringPlan,
  loadCase: string,
  setting: AdjusterSetting,
): SettingDocument | null {
  const { adjuster } = planned.inputs.question[end];
  const typed = adjusterOf(planned, end);
  if (adjuster === null || typed === undefined) return null;
  const turns = (from: number): number | null => {
    const exact = turnsBetween(adjuster, from, setting.position);
    return exact === null ? null : quarter(exact);
  };
  return {
    at: settingAt(typed, setting),
    position: setting.position,
    left: rangeOf(adjuster).most - setting.position,
    turnsFromLoosest: turns(0),
    turnsFromFound: turnsFromFound(planned, end, turns),
    fromLoads: spring.cells.flatMap((other) => {
      if (other.kind !== 'planned' || other.loadCase === loadCase || other.cell.setting === null) return [];
      const { position, step } = other.cell.setting;
      const steps = step === null || setting.step === null ? null : setting.step - step;
      return [{ loadCase: other.loadCase, turns: turns(position), steps }];
    }),
  };
}

/** In the terms of the job file: a cam's steps count from 1, clicks include the dead ones at the start. */
export function settingAt(adjuster: Adjuster, { position, reading, step }: AdjusterSetting): SettingAt {
  switch (adjuster.kind) {
    case 'cam':
      return { step: step! + 1 };
    case 'clicks':
      return { click: step === 0 ? 0 : step! + (adjuster.dead ?? 0) };
    case 'cap':
      return { turns: position / siOf(adjuster.lead) };
    case 'spacer':
      return { spacer: reading! };
    case 'collar':
      return { reading: reading! };
    case 'none':
      throw new RangeError('settingAt: an adjuster of the kind "none" has no setting');
  }
}

/** One entry for each side that was found to differ, one for both where they were found alike. */
function turnsFromFound(
  planned: JobPlan,
  end: End,
  turns: (from: number) => number | null,
): SettingDocument['turnsFromFound'] {
  const { found } = planned.inputs.question[end];
  const setting = planned.job.setups.asFound[end];
  if (found === null || setting === undefined) return null;
  const entries = strutsOf(setting).flatMap((strut, i) => {
    const each = turns(found[i]!);
    return each === null ? [] : [{ strut, turns: each }];
  });
  return entries.length === 0 ? null : entries;
}

function strutsOf(setting: EndSetting): readonly Strut[] {
  if ('single' in setting) return ['single'];
  return 'both' in setting ? ['both'] : ['left', 'right'];
}
