import type { JobDocument } from '@sagwright/records/schema';
import { write } from '../../job/edits.ts';
import { placesInOrder } from '../../job/places.ts';
import { groups, members as words } from '../../words/figures.ts';
import { place } from '../../words/machine.ts';
import { type FigureGroup, quantity, together } from './figure.ts';

/** Every place of the machine, whether something lies there or not. */
export function placeGroup(job: JobDocument): FigureGroup {
  return {
    id: 'places',
    title: groups.places,
    parts: placesInOrder(job).map(([id, { name, kind }]) => {
      const path = `machine.places.${id}`;
      return {
        title: name,
        figures: [
          { kind: 'text', path: `${path}.name`, label: words.name, most: 120 },
          {
            kind: 'choice',
            path: `${path}.kind`,
            label: words.kind,
            value: kind,
            choices: Object.entries(place.kind).map(([value, word]) => ({ value, word })),
            change: (document, value) => [write(document, ['machine', 'places', id, 'kind'], value)],
          },
          ...together(
            `${path}.at`,
            ['x', 'height'],
            [
              ['x', words.x, 'forwardOfRearAxle', 'luggagePlace'],
              ['height', words.height, 'height', 'placeHeight'],
            ],
          ),
          quantity(`${path}.limit`, words.limit, 'ratedMass'),
        ],
      };
    }),
  };
}

/** Everybody and everything of the job, aboard a load or not. */
export function thingGroup(job: JobDocument): FigureGroup {
  const things = Object.entries(job.things).sort(([, x], [, y]) => x.order - y.order);
  return {
    id: 'things',
    title: groups.things,
    parts: things.map(([id, { name, kind }]) => ({
      title: name,
      figures: [
        { kind: 'text', path: `things.${id}.name`, label: words.name, most: 120 },
        quantity(`things.${id}.mass`, words.mass, 'thingMass', kind),
      ],
    })),
  };
}
