import type { JobDocument } from '@sagwright/records/schema';
import type { Travel } from '@sagwright/records/schema/machine';
import { choicesOf } from '../../fields/choicesOf.ts';
import { adjusters, groups, struts as words } from '../../words/figures.ts';
import { adjusterFigures } from './adjusterFigures.ts';
import { changeTravel } from './changeTravel.ts';
import { type Figure, type FigureGroup, type FigurePart, quantity, together } from './figure.ts';
import { airParts, frontTravelPart, legsPart, stackPart, unitPart } from './forkFigures.ts';
import { changeCount } from './foundFigures.ts';
import { partOrNone } from './partOrNone.ts';
import { drivePart, earlierPart, pointFigures, tapeParts, travelColumns } from './pointFigures.ts';
import { rubberPart } from './rubberFigures.ts';
import { airOfShockPart, buildFigure, lengthAdjusterPart } from './shockFigures.ts';

const SHOCK = 'machine.rear.shock';
const FORK = 'machine.front.fork';

/** The rear: how the wheel moves the shock, the shock, and what sets its preload. */
export function rearGroup(job: JobDocument): FigureGroup {
  const { travel, shock, drive } = job.machine.rear;
  return {
    id: 'rear',
    title: groups.rear,
    parts: [
      { title: words.travel, figures: travelFigures(travel) },
      ...tapeParts(travel),
      ...earlierPart(travel),
      ...drivePart(drive),
      {
        title: words.rear,
        figures: [
          countOf(job),
          buildFigure(shock.build),
          quantity(`${SHOCK}.stroke`, words.stroke, 'stroke', 'stroke'),
          quantity(`${SHOCK}.length`, words.length, 'shockLength', 'tape'),
          quantity(`${SHOCK}.springOver`, words.springOver, 'coilDiameter', 'coilDiameter'),
          quantity(`${SHOCK}.friction`, words.friction.rear, 'friction', 'friction'),
        ],
      },
      airOfShockPart(shock.air),
      lengthAdjusterPart(shock.lengthAdjuster, job.choice?.shockLength),
      gasPart(shock.gas),
      ...rubberAndTopOut(SHOCK, shock),
      { title: adjusters.title, figures: adjusterFigures(`${SHOCK}.adjuster`, shock.adjuster) },
    ],
  };
}

/** The fork; where nobody looked into it, all of it is assumed. */
export function frontGroup(job: JobDocument): FigureGroup {
  const { fork, travel } = job.machine.front;
  return {
    id: 'front',
    title: groups.front,
    parts: [
      frontTravelPart(travel),
      ...(travel === undefined ? [legsPart(fork), ...airParts(fork?.air)] : [unitPart(travel)]),
      ...(travel?.kind === 'force'
        ? []
        : [
            ...rubberAndTopOut(FORK, fork ?? {}),
            ...(travel === undefined ? [stackPart(fork ?? {})] : []),
            { title: adjusters.title, figures: adjusterFigures(`${FORK}.adjuster`, fork?.adjuster) },
          ]),
    ],
  };
}

function travelFigures(travel: Travel): readonly Figure[] {
  const path = 'machine.rear.travel';
  const kind: Figure = {
    kind: 'choice',
    path: `${path}.kind`,
    label: words.travelKind,
    value: travel.kind,
    choices: choicesOf(words.travelKinds),
    change: changeTravel,
  };
  switch (travel.kind) {
    case 'leverage':
      return [kind, quantity(`${path}.ratio`, words.ratio.leverage, 'leverage', 'ratio')];
    case 'motion':
      return [kind, quantity(`${path}.ratio`, words.ratio.motion, 'motion', 'ratio')];
    case 'table':
      return [
        kind,
        {
          kind: 'rows',
          path: `${path}.rows`,
          label: words.rows,
          columns: travelColumns,
          least: 3,
          held: 'list',
        },
      ];
    case 'taped':
      return [
        kind,
        {
          kind: 'rows',
          path: `${path}.points`,
          label: words.rows,
          columns: travelColumns,
          least: 3,
          held: 'members',
        },
      ];
    case 'direct':
    case 'linkage':
      return [kind, ...pointFigures(travel)];
  }
}

function countOf(job: JobDocument): Figure {
  return {
    kind: 'choice',
    path: `${SHOCK}.count`,
    label: words.count,
    value: String(job.machine.rear.shock.count),
    choices: choicesOf(words.counts),
    change: (document, value) => changeCount(document, value === '1' ? 1 : 2),
  };
}

function gasPart(gas: unknown): FigurePart {
  const path = `${SHOCK}.gas`;
  const figures = together(
    path,
    ['shaft', 'pressure'],
    [
      ['shaft', words.shaft, 'shaftDiameter', 'shaft'],
      ['pressure', words.pressure, 'gasPressure', 'gasPressure'],
      ['volume', words.volume, 'gasVolume', 'gasVolume'],
      ['temperature', words.temperature, 'temperature'],
    ],
  );
  return partOrNone(path, words.gas, gas, figures);
}

function rubberAndTopOut(
  strut: string,
  { rubber, topOut }: { readonly rubber?: unknown; readonly topOut?: unknown },
): readonly FigurePart[] {
  return [
    rubberPart(strut, rubber),
    partOrNone(
      `${strut}.topOut`,
      words.topOut,
      topOut,
      together(
        `${strut}.topOut`,
        ['length', 'rate'],
        [
          ['length', words.topOutLength, 'topOutLength', 'tape'],
          ['rate', words.topOutRate, 'topOutRate', 'topOut'],
        ],
      ),
    ),
  ];
}
