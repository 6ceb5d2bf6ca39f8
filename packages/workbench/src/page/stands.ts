import type { AxleLoads } from '@sagwright/model/limits/limits';
import type { FirstMoments } from '@sagwright/model/masses/pointMass';
import { together } from '@sagwright/model/masses/pointMass';
import type { Figure, Stand } from '@sagwright/model/plan/answer';
import type { MachineSI } from '@sagwright/model/statics/machine';
import type { EndRest } from '@sagwright/model/statics/rest';
import {
  format,
  formatFigureNumber,
  formatValueNumber,
  type ShownDimension,
  unitOf,
} from '../format/format.ts';
import type { Units } from '../format/units.ts';
import type { FigureWords, RestView, StandView } from './shapes.ts';

/** How a machine stands with a load, for the drawings; its attitude comes in words already. */
export function standView(
  stand: Stand,
  machine: MachineSI,
  load: FirstMoments,
  attitude: StandView['attitude'],
  units: Units,
): StandView {
  const { answer, travel, band, loads } = stand;
  if (answer.kind !== 'rest' || travel === null) {
    const why =
      answer.kind === 'tips'
        ? `tips over the ${answer.over} wheel`
        : 'does not come to rest with these figures';
    return {
      state: null,
      shockStroke: null,
      why,
      centre: null,
      rear: null,
      front: null,
      loads: null,
      attitude: [],
    };
  }
  const [heave, pitch, rear, front] = answer.rest.state as readonly [number, number, number, number];
  return {
    state: [heave, pitch, rear, front],
    shockStroke: answer.rest.rear.stroke,
    why: null,
    centre: wholeCentre(machine, load),
    rear: restView(answer.rest.rear, travel.rear, band?.rear ?? null, units),
    front: restView(answer.rest.front, travel.front, band?.front ?? null, units),
    loads: loads === null ? null : axleLoadsView(loads, units),
    attitude,
  };
}

/** A figure in words, its ± and unit apart. */
export function figureWords(figure: Figure, dimension: ShownDimension, units: Units): FigureWords {
  const value = formatValueNumber(figure, dimension, units);
  const whole = formatFigureNumber(figure, dimension, units);
  const plusMinus = figure.plusMinus === null ? null : whole.slice(whole.indexOf('±') + 2);
  return { value, plusMinus, unit: unitOf(dimension, units) };
}

function wholeCentre(machine: MachineSI, load: FirstMoments): { x: number; height: number } {
  const { sprung, rear, front, geometry } = machine;
  const carried =
    load.mass > 0
      ? [{ mass: load.mass, x: load.momentX / load.mass, height: load.momentHeight / load.mass }]
      : [];
  const { x, height } = together([
    sprung,
    { mass: rear.unsprung, x: 0, height: rear.tyre.radius },
    { mass: front.unsprung, x: geometry.wheelbase, height: front.tyre.radius },
    ...carried,
  ]);
  return { x, height };
}

const standings: Readonly<Record<EndRest['standing'], string>> = {
  free: '',
  'topped out': 'fully out',
  'on top-out spring': 'on the top-out spring',
  'on rubber': 'on the rubber',
  bottomed: 'on metal',
};

function restView(
  rest: EndRest,
  travel: Figure,
  band: { readonly least: number; readonly most: number } | null,
  units: Units,
): RestView {
  return {
    restMm: rest.travel * 1000,
    fromMm: (band?.least ?? rest.travel) * 1000,
    toMm: (band?.most ?? rest.travel) * 1000,
    plusMinusMm: (travel.plusMinus ?? 0) * 1000,
    words: figureWords(travel, 'length', units),
    percent: format(rest.travel / rest.travelMax, 'share', units),
    standing: standings[rest.standing],
  };
}

function axleLoadsView(loads: AxleLoads, units: Units): NonNullable<StandView['loads']> {
  return {
    rear: figureWords({ value: loads.rear, plusMinus: loads.rearPlusMinus }, 'mass', units),
    front: figureWords({ value: loads.front, plusMinus: loads.frontPlusMinus }, 'mass', units),
    total: figureWords({ value: loads.total, plusMinus: loads.totalPlusMinus }, 'mass', units),
  };
}
