import { rangeOf, settingNear } from '@sagwright/model/plan/adjuster';
import { wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import { format, formatPlainNumber, formatRange } from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { type End, springInView } from '../result/inView.ts';
import { adjusterOf, settingAt } from '../result/setting.ts';
import { narrowing, narrowingWords } from '../words/assumed.ts';
import { words } from '../words/catalogue.ts';
import { adjusterName, settingNumber, settingUnit } from '../words/settings.ts';
import { suggestionWords } from '../words/suggestion.ts';
import type { AdjusterView, EndView, WantedView } from './shapes.ts';
import { airAsAdjuster } from './shock.ts';
import { springView } from './springs.ts';

/** One end for the page: its travel, what each load wants, its adjuster and its springs. */
export function endView(
  planned: JobPlan,
  end: End,
  letters: ReadonlyMap<string, string>,
  units: Units,
): EndView {
  const { plan, inputs } = planned;
  const machine = inputs.question.machine;
  const { rake } = machine.geometry;
  const here = machine[end];
  const travelMax = wheelTravelAt(here, rake, here.strokeMax);
  const hangs = plan.alone.answer.kind === 'rest' ? plan.alone.answer.rest[end].hangingTravel : 0;
  const starts = here.struts.flatMap((strut) => (strut.rubber === null ? [] : [strut.rubber.start]));
  const rubber = starts.length === 0 ? null : wheelTravelAt(here, rake, Math.min(...starts));
  const { spring, by } = plan.planned[end];
  const { suggestion } = plan[end];
  const suggested = suggestionWords(planned, end, units);
  return {
    travelMaxMm: travelMax * 1000,
    travelMaxWords: formatPlainNumber(travelMax, 'length', units),
    strokeMaxMm: here.strokeMax * 1000,
    hangsMm: hangs * 1000,
    hangsWords: formatPlainNumber(hangs, 'length', units),
    rubberMm: rubber === null ? null : rubber * 1000,
    wanted: wantedByLoad(planned, end, units),
    adjuster: adjusterView(planned, end, units),
    springs: plan[end].springs.map((each) => springView(planned, end, each, letters, units)),
    planned: spring,
    plannedBy: by,
    suggested: suggestion.kind === 'spring' ? suggestion.spring : null,
    headline: suggested.headline,
    suggestion: suggested.sentences,
    remedies: suggested.remedies,
    perTurn: perTurnWords(planned, end, units),
    narrowing: narrowingView(planned, end, units),
  };
}

function narrowingView(planned: JobPlan, end: End, units: Units): EndView['narrowing'] {
  const says = narrowingWords(planned, end, units);
  const narrowest = narrowing(planned, end);
  return says === null || narrowest === null ? null : { says, path: narrowest.input };
}

function wantedByLoad(planned: JobPlan, end: End, units: Units): Readonly<Record<string, WantedView>> {
  const wanted: Record<string, WantedView> = {};
  for (const { cells } of planned.plan[end].springs) {
    for (const cell of cells) {
      if (cell.kind !== 'planned') continue;
      const { low, aim, high } = cell.cell.wanted;
      wanted[cell.loadCase] = {
        fromMm: low * 1000,
        aimMm: aim * 1000,
        toMm: high * 1000,
        words: formatRange(low, high, 'length', units),
      };
    }
  }
  return wanted;
}

function adjusterView(planned: JobPlan, end: End, units: Units): AdjusterView | null {
  const { adjuster } = planned.inputs.question[end];
  const typed = adjusterOf(planned, end);
  if (adjuster === null || typed === undefined || typed.kind === 'none')
    return end === 'rear' ? airAsAdjuster(planned, units) : null;
  const { most } = rangeOf(adjuster);
  const at = (position: number): string =>
    settingNumber(settingAt(typed, settingNear(adjuster, position, 0)), units);
  return {
    sets: 'preload',
    mostMm: most * 1000,
    name: adjusterName(planned, end),
    unit: settingUnit(planned, end, units),
    fromWords: at(0),
    toWords: at(most),
    stepsMm:
      typed.kind === 'cam' && adjuster.kind === 'steps' ? adjuster.positions.map((each) => each * 1000) : [],
  };
}

/** What one turn of the planned spring's adjusters answers; null where nothing is turned. */
function perTurnWords(planned: JobPlan, end: End, units: Units): string | null {
  const kilograms = springInView(planned, end)?.kilogramsPerTurn ?? null;
  if (kilograms === null) return null;
  const sides = planned.inputs.question.machine[end].struts.length;
  return words.settings.perTurn(format(kilograms, 'mass', units), end, sides);
}
