import type { Drive } from '@sagwright/records/schema/drive';
import { struts as words } from '../../words/figures.ts';
import { type Figure, type FigurePart, quantity } from './figure.ts';

/** The places of a rear known by its hard points, each by both of its coordinates. */
export function pointFigures(names: readonly (keyof typeof words.points)[]): readonly Figure[] {
  return [
    ...names.flatMap((name) => placeFigures(`machine.rear.travel.${name}`, words.points[name])),
    quantity('machine.rear.travel.sideways', words.sideways, 'sideways', 'tape'),
    quantity('machine.rear.travel.earlierLeverage', words.earlierLeverage, 'leverage', 'ratio'),
  ];
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
