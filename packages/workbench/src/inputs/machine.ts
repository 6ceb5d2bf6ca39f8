import type { GasSI } from '@sagwright/model/dampers/gas';
import type { EndSI } from '@sagwright/model/statics/machine';
import type { UnweighedSI, WeighingSI } from '@sagwright/model/statics/weighing';
import type { Tyre, UnsprungParts } from '@sagwright/records/schema/machine';
import { unsprungShare } from './assumptions.ts';
import { raised } from './clampHeight.ts';
import { type Desk, impossible, note } from './desk.ts';
import { type FoundEnd, foundEnd } from './ends.ts';
import { forkParts } from './forkParts.ts';
import { type FrontMotion, otherFront } from './frontTravel.ts';
import { massCentreHeightOf } from './massCentre.ts';
import { measuredAtOf } from './measuredAt.ts';
import { rearMotion } from './rearMotion.ts';
import { rubberOf } from './rubber.ts';
import { shockAir } from './shockAir.ts';
import { rearStroke, shockGas, topOutOf } from './struts.ts';
import { tyreRadius } from './tyreRadius.ts';

/** The machine as it was weighed, and what was found at both ends. */
export interface MachineFigures {
  readonly machine: UnweighedSI;
  readonly weighing: WeighingSI;
  readonly rear: FoundEnd;
  readonly front: FoundEnd;
}

export function machineFigures(desk: Desk): MachineFigures {
  const { take, job } = desk;
  const { machine } = job;
  const wheelbase = take.orAssumed('machine.wheelbase', machine.wheelbase, 'geometry', 'wheelbase');
  const weighing: WeighingSI = {
    front: take.known('machine.weighing.front', machine.weighing.front, 'scale'),
    rear: take.known('machine.weighing.rear', machine.weighing.rear, 'scale'),
    wholeHeight: massCentreHeightOf(desk, wheelbase),
    attitude: machine.weighing.attitude,
  };
  const rear = rearEnd(desk, weighing);
  const rake = take.orAssumed('machine.rake', machine.rake, 'angle', 'rake');
  const front = frontEnd(desk, weighing, rake);
  note(desk, 'bushes and pivot friction zero', 'machine.rear');
  return {
    machine: {
      geometry: {
        wheelbase,
        rake,
        forkOffset:
          machine.forkOffset === undefined
            ? null
            : take.known('machine.forkOffset', machine.forkOffset, 'offset'),
        seat:
          machine.seat === undefined
            ? null
            : {
                x: take.known('machine.seat.x', machine.seat.x, 'geometry'),
                height: take.known('machine.seat.height', machine.seat.height, 'geometry'),
              },
      },
      load: { mass: 0, momentX: 0, momentHeight: 0 },
      rear: rear.end,
      front: front.end,
    },
    weighing,
    rear: rear.figures,
    front: front.figures,
  };
}

interface End {
  readonly end: EndSI;
  readonly figures: FoundEnd;
}

function rearEnd(desk: Desk, weighing: WeighingSI): End {
  const { take, job } = desk;
  const { rear } = job.machine;
  const { shock } = rear;
  const strokeMax = rearStroke(desk);
  const figures = foundEnd(desk, 'rear', shock.count, shock.adjuster, job.setups.asFound.rear);
  const shared = {
    gas: shockGas(desk, shock, strokeMax),
    rubber: rubberOf(desk, 'machine.rear.shock.rubber', shock.rubber, strokeMax),
    ...airOf(desk, strokeMax),
    topOut: topOutOf(desk, 'machine.rear.shock.topOut', shock.topOut, strokeMax),
    friction: take.orAssumed('machine.rear.shock.friction', shock.friction, 'friction', 'rearFriction'),
  };
  const radius = tyreRadius(desk, 'rear');
  return {
    figures,
    end: {
      unsprung: unsprungOf(desk, 'rear', weighing),
      tyre: { radius, rate: tyreRate(desk, 'rear', rear.tyre) },
      strokeMax,
      ...rearMotion(desk, radius, strokeMax),
      struts: figures.struts.map((strut) => ({ ...strut, ...shared })),
    },
  };
}

function frontEnd(desk: Desk, weighing: WeighingSI, rake: number): End {
  const { front } = desk.job.machine;
  const { figures, end } =
    front.travel === undefined ? telescopic(desk, rake) : otherFront(desk, front.travel);
  return {
    figures,
    end: {
      unsprung: unsprungOf(desk, 'front', weighing),
      tyre: { radius: tyreRadius(desk, 'front'), rate: tyreRate(desk, 'front', front.tyre) },
      ...end,
    },
  };
}

function telescopic(desk: Desk, rake: number): FrontMotion {
  const { take, job } = desk;
  const { fork } = job.machine.front;
  const strokeMax = take.orAssumed('machine.front.fork.stroke', fork?.stroke, 'stroke', 'forkStroke');
  const setting = job.setups.asFound.front;
  const figures =
    setting === undefined ? assumedFork(desk) : foundEnd(desk, 'front', 2, fork?.adjuster, setting);
  const parts = forkParts(desk, fork, strokeMax, figures.struts.length);
  return {
    figures,
    end: {
      referenceTravel:
        measuredAtOf(desk, 'front', strokeMax * Math.cos(rake)) -
        raised(desk, fork?.clampHeight) * Math.cos(rake),
      strokeMax,
      kinematics: { kind: 'fork' },
      axlePath: { kind: 'fork' },
      struts: figures.struts.map((strut, i) => ({ ...strut, ...parts[i]! })),
    },
  };
}

/** A fork that nobody looked into: two equal legs, assumed. */
function assumedFork(desk: Desk): FoundEnd {
  const rate = desk.take.orAssumed('setups.asFound.front.rate', undefined, 'springRate', 'forkSpringRate');
  const preload = desk.take.orAssumed('setups.asFound.front.preload', undefined, 'collar', 'forkPreload');
  const leg = { spring: { kind: 'linear', rate }, preload } as const;
  return { fitted: null, struts: [leg, leg], found: null };
}

function airOf(desk: Desk, strokeMax: number): { readonly air?: GasSI } {
  const air = shockAir(desk, desk.job.machine.rear.shock.air, strokeMax);
  return air === null ? {} : { air };
}

function unsprungOf(desk: Desk, end: 'rear' | 'front', weighing: WeighingSI): number {
  const { job } = desk;
  const path = `machine.${end}.unsprung`;
  const parts = end === 'front' ? job.machine.front.unsprungParts : undefined;
  const mass = parts === undefined ? unsprungWhole(desk, end, weighing) : addedUp(desk, parts);
  if (!(mass < weighing[end])) {
    impossible(
      desk,
      parts === undefined ? path : `${path}Parts`,
      `Mass that moves with the ${end} wheel: ${mass.toFixed(1)} kg, but the scale under it reads ${weighing[end].toFixed(1)} kg; it must be less. Check the scale reading and the unsprung mass.`,
    );
  }
  return mass;
}

function unsprungWhole({ take, job }: Desk, end: 'rear' | 'front', weighing: WeighingSI): number {
  const path = `machine.${end}.unsprung`;
  const typed = job.machine[end].unsprung;
  if (typed !== undefined) return take.known(path, typed, 'unsprung');
  const { share, why } = unsprungShare[end === 'front' ? (job.machine.front.fork?.tubes ?? end) : end];
  const usual = share * (weighing.front + weighing.rear);
  return take.workedOut(path, usual, (usual * unsprungShare.plusMinus.value) / 100, 'mass', 'kg', why);
}

/** What moves with the front wheel, part by part; which tubes those are the build of the fork says. */
function addedUp({ take, job }: Desk, { wheel, brakes, tubes, guard }: UnsprungParts): number {
  const path = 'machine.front.unsprungParts';
  const build = job.machine.front.fork?.tubes;
  const lower = build === undefined ? 'tubesMass' : build === 'inverted' ? 'thinTubesMass' : 'thickTubesMass';
  return (
    take.known(`${path}.wheel`, wheel, 'unsprung') +
    take.orAssumed(`${path}.brakes`, brakes, 'unsprung', 'brakesMass') +
    take.orAssumed(`${path}.tubes`, tubes, 'unsprung', lower) +
    take.orAssumed(`${path}.guard`, guard, 'unsprung', 'guardMass')
  );
}

function tyreRate(desk: Desk, end: 'rear' | 'front', tyre: Tyre | undefined): number {
  const assumption = end === 'rear' ? 'tyreRateRear' : 'tyreRateFront';
  return desk.take.orAssumed(`machine.${end}.tyre.rate`, tyre?.rate, 'tyreRate', assumption);
}
