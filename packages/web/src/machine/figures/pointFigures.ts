import type { Drive } from '@sagwright/records/schema/drive';
import type { Travel } from '@sagwright/records/schema/machine';
import type { PointLength } from '@sagwright/records/schema/pointTape';
import { struts as words } from '../../words/figures.ts';
import { type Column, type Figure, type FigurePart, quantity } from './figure.ts';

const TRAVEL = 'machine.rear.travel';

/** The places of a rear known by its hard points, each by both of its coordinates. */
export function pointFigures(names: readonly (keyof typeof words.points)[]): readonly Figure[] {
  return [
    ...names.flatMap((name) => placeFigures(`${TRAVEL}.${name}`, words.points[name])),
    quantity(`${TRAVEL}.sideways`, words.sideways, 'sideways', 'tape'),
  ];
}

/** Lengths that a tape read between the parts, in their order; none where no tape was laid. */
export function tapeParts(travel: Travel): readonly FigurePart[] {
  if (!('tape' in travel) || travel.tape === undefined) return [];
  const lengths = Object.entries<PointLength>(travel.tape).sort(([, a], [, b]) => a.order - b.order);
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

function lengthName(each: PointLength): string {
  const { names, parts } = words.tape;
  return each.kind === 'between'
    ? names.between(parts[each.from], parts[each.to])
    : names[each.kind](parts[each.of]);
}

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
        ...placeFigures(`${path}.frontSprocket`, words.frontSprocket),
        quantity(`${path}.pitch`, words.pitch, 'drivePitch'),
        teeth('front'),
        teeth('rear'),
      ],
    },
  ];
}

function placeFigures(path: string, label: string): readonly Figure[] {
  return [
    quantity(`${path}.x`, `${label}, ${words.pointX}`, 'forwardOfRearAxle', 'hardPoint'),
    quantity(`${path}.height`, `${label}, ${words.pointHeight}`, 'height', 'hardPoint'),
  ];
}
