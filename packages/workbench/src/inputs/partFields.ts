import type { PartName } from '@sagwright/model/rear/hardPoints';
import type { Points, Rear } from '@sagwright/records/schema/machine';

/** A part of a rear known by its hard points: where its place stands in the job. */
export interface PartField {
  readonly part: Exclude<PartName, 'axle'>;
  readonly path: string;
  readonly place: NonNullable<Rear['pivot']>;
}

/** The parts of a rear in the order in which they are found, each with its field. */
export function partFields({ pivot }: Rear, travel: Points): readonly PartField[] {
  const parts: readonly (readonly [PartField['part'], PartField['place']])[] =
    travel.kind === 'direct'
      ? [
          ['pivot', pivot!],
          ['arm eye', travel.armEye],
          ['frame eye', travel.frameEye],
        ]
      : [
          ['pivot', pivot!],
          ['link end', travel.linkEnd],
          ['rocker pivot', travel.rocker.pivot],
          ['link pin', travel.rocker.pin],
          ['rocker eye', travel.rockerEye],
          ['far eye', travel.farEye],
        ];
  return parts.map(([part, place]) => ({ part, place, path: partPaths[part] }));
}

/** The field of each part. */
export const partPaths: Readonly<Record<PartName, string>> = {
  axle: 'machine.rear.tyre.radius',
  pivot: 'machine.rear.pivot',
  'arm eye': 'machine.rear.travel.armEye',
  'frame eye': 'machine.rear.travel.frameEye',
  'rocker pivot': 'machine.rear.travel.rocker.pivot',
  'link pin': 'machine.rear.travel.rocker.pin',
  'link end': 'machine.rear.travel.linkEnd',
  'rocker eye': 'machine.rear.travel.rockerEye',
  'far eye': 'machine.rear.travel.farEye',
};
