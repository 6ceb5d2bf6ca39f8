import type { JobDocument } from '@sagwright/records/schema';
import { choicesOf } from '../../fields/choicesOf.ts';
import { write } from '../../job/edits.ts';
import { frame, groups, plate, scales, tyres } from '../../words/figures.ts';
import { stanceFigures as words } from '../../words/stance.ts';
import { type Figure, type FigureGroup, quantity, together } from './figure.ts';
import { massCentreFigures } from './stanceFigures.ts';

/** Groups that every machine has: what its scales, plate, drawing and tyres say. */
export function fixedGroups(job: JobDocument): readonly FigureGroup[] {
  return [
    { id: 'scales', title: groups.scales, parts: [{ title: null, figures: scaleFigures(job) }] },
    { id: 'plate', title: groups.plate, parts: [{ title: null, figures: plateFigures }] },
    {
      id: 'frame',
      title: groups.frame,
      parts: [{ title: null, figures: [...kindFigures(job), ...frameFigures] }],
    },
    {
      id: 'tyres',
      title: groups.tyres,
      parts: (['rear', 'front'] as const).map((end) => ({
        title: tyres.title[end],
        figures: tyreFigures(end),
      })),
    },
  ];
}

function scaleFigures(job: JobDocument): readonly Figure[] {
  return [
    quantity('machine.weighing.rear', scales.rear, 'massOnWheel', 'scale'),
    quantity('machine.weighing.front', scales.front, 'massOnWheel', 'scale'),
    quantity('machine.weighing.fuel', scales.fuel, 'fuel', 'fuel'),
    {
      kind: 'choice',
      path: 'machine.weighing.attitude',
      label: scales.attitude,
      value: job.machine.weighing.attitude,
      choices: Object.entries(scales.attitudes).map(([value, word]) => ({ value, word })),
      change: (document, value) => [write(document, ['machine', 'weighing', 'attitude'], value)],
    },
    ...massCentreFigures(job),
    quantity('machine.rear.unsprung', scales.unsprungRear, 'unsprungMass', 'unsprung'),
    ...unsprungFront(job),
  ];
}

/** Whole, or in parts: of one that was weighed the other is not asked. */
function unsprungFront({ machine: { front } }: JobDocument): readonly Figure[] {
  const { partsFront } = scales;
  const whole = quantity('machine.front.unsprung', scales.unsprungFront, 'unsprungMass', 'unsprung');
  const parts = together(
    'machine.front.unsprungParts',
    ['wheel'],
    [
      ['wheel', partsFront.wheel, 'unsprungPart', 'unsprung'],
      ['brakes', partsFront.brakes, 'unsprungPart', 'unsprung'],
      ['tubes', partsFront.tubes[front.fork?.tubes ?? 'notKnown'], 'unsprungPart', 'unsprung'],
      ['guard', partsFront.guard, 'unsprungPart', 'unsprung'],
    ],
  );
  if (front.unsprung !== undefined) return [whole];
  return front.unsprungParts === undefined ? [whole, ...parts] : parts;
}

const plateFigures: readonly Figure[] = [
  quantity('machine.limits.gross', plate.gross, 'ratedMass'),
  quantity('machine.limits.rearAxle', plate.rearAxle, 'ratedMass'),
  quantity('machine.limits.frontAxle', plate.frontAxle, 'ratedMass'),
  quantity('machine.tank.capacity', plate.tank, 'tank'),
  ...together(
    'machine.tank.at',
    ['x', 'height'],
    [
      ['x', plate.tankX, 'forwardOfRearAxle', 'luggagePlace'],
      ['height', plate.tankHeight, 'height', 'placeHeight'],
    ],
  ),
];

const frameFigures: readonly Figure[] = [
  quantity('machine.wheelbase', frame.wheelbase, 'wheelbase', 'geometry'),
  quantity('machine.rake', frame.rake, 'rake', 'angle'),
  quantity('machine.forkOffset', frame.forkOffset, 'forkOffset', 'offset'),
  ...together(
    'machine.seat',
    ['x', 'height'],
    [
      ['x', frame.seatX, 'forwardOfRearAxle', 'geometry'],
      ['height', frame.seatHeight, 'height', 'geometry'],
    ],
  ),
  ...together(
    'machine.rear.pivot',
    ['x', 'height'],
    [
      ['x', frame.pivotX, 'forwardOfRearAxle', 'geometry'],
      ['height', frame.pivotHeight, 'height', 'geometry'],
    ],
  ),
  quantity('machine.rear.measuredAt', frame.measuredAt.rear, 'wheelTravel', 'tape'),
  quantity('machine.front.measuredAt', frame.measuredAt.front, 'wheelTravel', 'tape'),
];

/** What kind of machine it is, and what holds its height: some are not planned, or only with cautions, which is said. */
function kindFigures({ machine }: JobDocument): readonly Figure[] {
  return [
    {
      kind: 'choice',
      path: 'machine.kind',
      label: frame.kind,
      value: machine.kind,
      choices: choicesOf(frame.kinds),
      change: (document, value) => [write(document, ['machine', 'kind'], value)],
    },
    {
      kind: 'choice',
      path: 'machine.ridingHeightControl',
      label: frame.heightControl,
      value: machine.ridingHeightControl ?? 'none',
      choices: choicesOf(frame.heightControls),
      change: (document, value) => [
        write(document, ['machine', 'ridingHeightControl'], value === 'none' ? undefined : value),
      ],
    },
  ];
}

function tyreFigures(end: 'rear' | 'front'): readonly Figure[] {
  const path = `machine.${end}.tyre`;
  return [
    {
      kind: 'number',
      path: `${path}.loadIndex`,
      label: tyres.loadIndex,
      unit: tyres.index,
      least: 20,
      most: 100,
      whole: true,
    },
    quantity(`${path}.capacity`, tyres.capacity, 'ratedMass'),
    quantity(`${path}.pressure`, tyres.pressure, 'tyrePressure'),
    { kind: 'size', path: `${path}.size`, label: words.size },
    quantity(`${path}.radius`, tyres.radius, 'tyreRadius', 'tyreRadius'),
    quantity(`${path}.rate`, tyres.rate, 'tyreRate', 'tyreRate'),
  ];
}
