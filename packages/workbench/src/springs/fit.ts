import { verdictOf } from '@sagwright/model/limits/limits';
import { rangeOf } from '@sagwright/model/plan/adjuster';
import type { Figure } from '@sagwright/model/plan/answer';
import type { Desk } from '../inputs/desk.ts';
import { deskAgain } from '../inputs/deskAgain.ts';
import { choiceFigures, spacerOf } from '../inputs/ends.ts';
import { margins } from '../inputs/margins.ts';
import { ownFigure } from '../inputs/ownFigure.ts';
import { insideOf, springOverOf } from '../inputs/springFit.ts';
import { freeLengthOf, solidLengthOf } from '../inputs/springs.ts';
import { rearStroke } from '../inputs/struts.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import type { FitDocument, FittedAt, RoomLeft } from './document.ts';

/**
 * Whether a rear spring fits its shock:
 *   around    = inner diameter − what it goes over
 *   coil bind = free length − solid length − (preload at the tightest + stroke) − what is kept in hand
 * Each with its ±, from readings of the job alone; what lacks a figure is not checked. Null for a fork spring.
 */
export function fitDocument(planned: JobPlan, end: End, id: string): FitDocument | null {
  if (end === 'front') return null;
  const desk = deskAgain(planned);
  const { adjuster } = planned.inputs.question.rear;
  const most = adjuster === null ? 0 : rangeOf(adjuster).most;
  const loosest = fittedAt(desk, id, 0);
  return {
    around: aroundOf(desk, id),
    spacer:
      planned.job.springs[id]!.spacer === undefined ? null : ownFigure(desk, (again) => spacerOf(again, id)),
    loosest,
    tightest: fittedAt(desk, id, most),
    atLoosest: heldOrLoose(loosest.preload),
    coilBind: coilBindOf(desk, id, most),
  };
}

function aroundOf(desk: Desk, id: string): RoomLeft {
  const room = ownFigure(desk, (again) => {
    const [inside, over] = [insideOf(again, id), springOverOf(again)];
    return inside === null || over === null ? null : inside - over;
  });
  return roomLeft(room, [
    ...(insideOf(desk, id) === null ? [`springs.${id}.inside`] : []),
    ...(springOverOf(desk) === null ? ['machine.rear.shock.springOver'] : []),
  ]);
}

function coilBindOf(desk: Desk, id: string, most: number): RoomLeft {
  const spring = desk.job.springs[id]!;
  const room = ownFigure(desk, (again) => {
    const [free, solid] = [freeLengthOf(again, id), solidLengthOf(again, id, spring)];
    if (free === null || solid === null) return null;
    return free - solid - preloadOf(again, id) - most - rearStroke(again) - margins.keepFromCoilBind;
  });
  return roomLeft(room, [
    ...(freeLengthOf(desk, id) === null ? [`springs.${id}.freeLength`] : []),
    ...(solidLengthOf(desk, id, spring) === null ? [`springs.${id}.solidLength`] : []),
  ]);
}

function roomLeft(room: Figure | null, needs: readonly string[]): RoomLeft {
  if (room === null) return { room, verdict: 'not checked', needs };
  return { room, verdict: verdictOf(room.value, room.plusMinus ?? 0), needs: [] };
}

function fittedAt(desk: Desk, id: string, position: number): FittedAt {
  return {
    preload: ownFigure(desk, (again) => preloadOf(again, id) + position)!,
    length: ownFigure(desk, (again) => {
      const free = freeLengthOf(again, id);
      return free === null ? null : free - Math.max(0, preloadOf(again, id) + position);
    }),
  };
}

/** Preload with the adjuster at its loosest end [m]. */
function preloadOf(desk: Desk, id: string): number {
  const { shock } = desk.job.machine.rear;
  const setting = desk.job.setups.asFound.rear;
  return choiceFigures(desk, 'rear', shock.count, shock.adjuster, setting, id).preloadAtZero;
}

function heldOrLoose({ value, plusMinus }: Figure): FitDocument['atLoosest'] {
  if (Math.abs(value) < (plusMinus ?? 0)) return 'within its ±';
  return value > 0 ? 'held' : 'loose';
}
