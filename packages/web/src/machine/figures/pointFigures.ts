import type { Drive } from '@sagwright/records/schema/drive';
import type { Points, Travel } from '@sagwright/records/schema/machine';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import { inOrder } from '@sagwright/workbench/inputs/desk';
import { choicesOf } from '../../fields/choicesOf.ts';
import { write } from '../../job/edits.ts';
import { struts as words } from '../../words/figures.ts';
import { type Column, type Figure, type FigurePart, quantity } from './figure.ts';
import { lengthName } from './lengthName.ts';

const TRAVEL = 'machine.rear.travel';

/** The places of a rear known by its hard points, each by both of its coordinates, and what each is bolted to. */
export function pointFigures(travel: Points): readonly Figure[] {
  // By tape, a place without a ± is where a part is looked for: it has no usual one.
  const reading = travel.tape === undefined ? 'hardPoint' : undefined;
  const place = (name: keyof typeof words.points): readonly Figure[] =>
    placeFigures(`${TRAVEL}.${name}`, words.points[name], reading);
  const sideways = quantity(`${TRAVEL}.sideways`, words.sideways, 'sideways', 'tape');
  if (travel.kind === 'direct') return [...place('armEye'), ...place('frameEye'), sideways];
  return [
    boltedTo('rocker', travel.rocker?.on),
    ...place('rocker.pivot'),
    ...place('rocker.pin'),
    ...place('linkEnd'),
    ...place('rockerEye'),
    boltedTo('farEye', travel.farEye?.on),
    ...place('farEye'),
    sideways,
  ];
}

function boltedTo(name: 'rocker' | 'farEye', on: string | undefined): Figure {
  const steps = [...TRAVEL.split('.'), name, 'on'];
  return {
    kind: 'choice',
    path: steps.join('.'),
    label: words.boltedTo[name],
    value: on ?? '',
    choices: choicesOf(words.carriers),
    change: (document, value) => [write(document, steps, value)],
  };
}

/** Lengths that a tape read between the parts, in their order; none where no tape was laid. */
export function tapeParts(travel: Travel): readonly FigurePart[] {
  if (!('tape' in travel) || travel.tape === undefined) return [];
  const lengths = inOrder<PointLength>(travel.tape);
  const figures = lengths.flatMap(([id, each]): Figure[] => {
    const path = `${TRAVEL}.tape.${id}`;
    const name = lengthName(each);
    if (each.kind !== 'between') return [quantity(`${path}.length`, name, 'besideAxle', 'tape')];
    return [
      quantity(`${path}.length`, name, 'tapedLength', 'tape'),
      ...(each.sideways === undefined
        ? []
        : [quantity(`${path}.sideways`, words.tape.sideways(name), 'sideways', 'tape')]),
    ];
  });
  return [{ title: words.tape.title, figures }];
}

/** What was known before, beside rows or points: one ratio, and a survey beside points. */
export function earlierPart(travel: Travel): readonly FigurePart[] {
  if (travel.kind === 'leverage' || travel.kind === 'motion') return [];
  const leverage = quantity(`${TRAVEL}.earlierLeverage`, words.earlierLeverage, 'leverage', 'ratio');
  if (travel.kind === 'table' || travel.kind === 'taped')
    return [{ title: words.earlier, figures: [leverage] }];
  const survey: Figure = {
    kind: 'rows',
    path: `${TRAVEL}.earlierSurvey`,
    label: words.earlierSurvey,
    columns: travelColumns,
    least: 0,
    held: 'members',
  };
  return [{ title: words.earlier, figures: [leverage, survey] }];
}

/** Wheel against shock. */
export const travelColumns: readonly Column[] = [
  { name: 'wheel', label: words.wheel, bound: 'wheelTravel', reading: 'tape' },
  { name: 'shock', label: words.shockLength, bound: 'shockLength', reading: 'tape' },
];

/** The chain or belt that a file told of; a shaft has no figures. */
export function drivePart(drive: Drive | undefined): readonly FigurePart[] {
  if (drive === undefined || drive.kind === 'shaft') return [];
  const path = 'machine.rear.drive';
  const teeth = (end: 'front' | 'rear'): Figure => ({
    kind: 'number',
    path: `${path}.teeth.${end}`,
    label: words.teeth[end],
    unit: words.teeth.unit,
    least: 6,
    most: 200,
    whole: true,
  });
  return [
    {
      title: words.drive[drive.kind],
      figures: [
        ...placeFigures(`${path}.frontSprocket`, words.frontSprocket, 'hardPoint'),
        quantity(`${path}.pitch`, words.pitch, 'drivePitch'),
        teeth('front'),
        teeth('rear'),
      ],
    },
  ];
}

function placeFigures(path: string, label: string, reading?: 'hardPoint'): readonly Figure[] {
  return [
    quantity(`${path}.x`, `${label}, ${words.pointX}`, 'forwardOfRearAxle', reading),
    quantity(`${path}.height`, `${label}, ${words.pointHeight}`, 'height', reading),
  ];
}
