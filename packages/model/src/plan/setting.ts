import { attitudeAt } from '../attitude/attitude.ts';
import type { FirstMoments } from '../masses/pointMass.ts';
import { wheelTravelAt } from '../rear/wheelMotion.ts';
import { type Parameters, putOn, setParameter } from '../statics/parameters.ts';
import type { EndName, Prepared } from '../statics/prepared.ts';
import { frictionBand, type Rest, restFrom, restOf } from '../statics/rest.ts';
import { stateDerivatives } from '../uncertainty/derivatives.ts';
import type { Direction } from '../uncertainty/inputs.ts';
import { type TravelSpread, travelHalfWidths } from '../uncertainty/travelSpread.ts';
import { type AdjusterSetting, turnsBetween } from './adjuster.ts';
import type { AtSetting } from './answer.ts';
import type { EndQuestion, SpringChoiceSI } from './question.ts';

/** A machine with one candidate spring fitted to an end, made ready. */
export interface Fitted {
  readonly name: EndName;
  readonly choice: SpringChoiceSI;
  readonly parameters: Parameters;
  readonly prepared: Prepared;
  /** Places of the preloads of this end in the parameters. */
  readonly preloads: readonly number[];
  /** With nothing aboard, by the preloads and pressures set; loads that want one setting, as at a collar's end, share it. */
  readonly alone: Map<string, AtSetting['alone']>;
}

const NOTHING: FirstMoments = { mass: 0, momentX: 0, momentHeight: 0 };

/**
 * What the machine does with a preload set on every strut of the end, with a load and without.
 * start  where to start the balance, e.g. the state with the end held where it is wanted
 * directions, alone  inputs that act on it with the load, and with nothing aboard
 */
export function atSetting(
  fitted: Fitted,
  question: EndQuestion,
  load: FirstMoments,
  preloads: readonly number[],
  setting: AdjusterSetting | null,
  start: Float64Array,
  directions: readonly Direction[],
  alone: readonly Direction[],
): AtSetting {
  const { name, choice, parameters, prepared } = fitted;
  for (const [i, index] of fitted.preloads.entries()) setParameter(parameters, index, preloads[i]!);
  putOn(parameters, load);
  const rest = restNear(prepared, start);
  const preload = preloads[0]!;
  const end = prepared.machine[name];
  const here = rest?.[name] ?? null;
  const spread = rest === null ? null : travelSpread(fitted, rest, directions);
  const band = rest === null ? null : frictionBand(prepared, rest);
  const rubberStart = Math.min(...end.struts.map((strut) => strut.rubber?.start ?? Number.POSITIVE_INFINITY));
  const travelMax = name === 'rear' ? prepared.rearTravelMax : prepared.frontTravelMax;
  const attitude = rest === null ? null : attitudeAt(prepared, rest.state);
  const other: EndName = name === 'rear' ? 'front' : 'rear';
  putOn(parameters, NOTHING);
  return {
    preload,
    springLength: choice.freeLength === null ? null : choice.freeLength - Math.max(0, preload),
    turnsFromFound: turnsFromFound(question, setting),
    turnsFromZero:
      question.adjuster === null || setting === null
        ? null
        : turnsBetween(question.adjuster, 0, setting.position),
    rest,
    travel: { value: here?.travel ?? 0, plusMinus: spread?.[name] ?? null },
    band: band?.[name] ?? null,
    otherTravel: { value: rest?.[other].travel ?? 0, plusMinus: spread?.[other] ?? null },
    otherBand: band?.[other] ?? null,
    attitude,
    wheelRate: here?.wheelRate ?? 0,
    rideFrequency: here?.rideFrequency ?? null,
    frequencyWithoutTyre: here?.frequencyWithoutTyre ?? null,
    travelToRubber:
      here === null || !Number.isFinite(rubberStart)
        ? null
        : wheelTravelAt(end, prepared.machine.geometry.rake, rubberStart) - here.travel,
    travelToMetal: travelMax - (here?.travel ?? 0),
    strokeToCoilBind:
      choice.freeLength === null || choice.solidLength === null
        ? null
        : choice.freeLength - choice.solidLength - (end.strokeMax + Math.max(...preloads)),
    preloadAtExtension: Math.min(...preloads),
    alone: aloneAt(fitted, preloads, alone),
  };
}

function restNear(prepared: Prepared, start: Float64Array): Rest | null {
  const near = restFrom(prepared, Float64Array.from(start), 0, 'none');
  if (near.kind === 'rest') return near.rest;
  const cold = restOf(prepared);
  return cold.kind === 'rest' ? cold.rest : null;
}

/** With nothing aboard; the preloads must be set and the machine carry nothing. */
function aloneAt(
  fitted: Fitted,
  preloads: readonly number[],
  directions: readonly Direction[],
): AtSetting['alone'] {
  const pressures = fitted.prepared.machine[fitted.name].struts.map((strut) => strut.air?.pressure ?? 0);
  const setting = [...preloads, ...pressures].join(' ');
  const known = fitted.alone.get(setting);
  if (known !== undefined) return known;
  const alone = standingAlone(fitted, directions);
  fitted.alone.set(setting, alone);
  return alone;
}

function standingAlone(fitted: Fitted, directions: readonly Direction[]): AtSetting['alone'] {
  const { prepared, name } = fitted;
  const answer = restOf(prepared);
  if (answer.kind !== 'rest') return null;
  const { travel, standing } = answer.rest[name];
  return {
    travel: { value: travel, plusMinus: travelSpread(fitted, answer.rest, directions)[name] },
    band: frictionBand(prepared, answer.rest)?.[name] ?? null,
    standing,
  };
}

/** ± of both ends' travels at a rest of the machine with what it carries now. */
function travelSpread(fitted: Fitted, rest: Rest, directions: readonly Direction[]): TravelSpread {
  const { parameters, prepared } = fitted;
  const state = Float64Array.from(rest.state);
  const derivatives = stateDerivatives(parameters, prepared, state, directions);
  return travelHalfWidths(parameters, prepared, state, directions, derivatives);
}

function turnsFromFound(question: EndQuestion, setting: AdjusterSetting | null): readonly number[] | null {
  const { adjuster, found } = question;
  if (adjuster === null || setting === null || found === null) return null;
  const turns = found.map((position) => turnsBetween(adjuster, position, setting.position));
  return turns.every((turn) => turn !== null) ? turns : null;
}
