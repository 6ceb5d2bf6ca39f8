import type { TargetSet } from '@sagwright/records/schema/targets';

type Wanted = TargetSet['rows'][string]['wanted'];

const share = (low: number, aim: number, high: number, from: Wanted['from'] = 'stop'): Wanted => ({
  low: { value: low, unit: '%' },
  aim: { value: aim, unit: '%' },
  high: { value: high, unit: '%' },
  from,
  along: 'wheel',
});

const millimetres = (low: number, aim: number, high: number, along: Wanted['along']): Wanted => ({
  low: { value: low, unit: 'mm' },
  aim: { value: aim, unit: 'mm' },
  high: { value: high, unit: 'mm' },
  from: 'hanging',
  along,
});

const alone = { least: 1, most: 1 } as const;
const more = { least: 2, most: 10 } as const;

/**
 * Target sets that come with the program, to be copied into a job and changed there. Published targets disagree, so these
 * are alternatives with their origin, never one truth. A row is chosen by how many people are aboard and whether there is luggage.
 */
export const shippedTargets: Readonly<Record<string, TargetSet>> = {
  'touring-short-travel': {
    name: 'Touring, short rear travel',
    order: 1,
    origin: 'from memory: rider 25 to 33 % of travel, full load at most 40 %; front a third',
    rows: {
      'rear-light': { order: 1, end: 'rear', people: alone, luggage: 'without', wanted: share(25, 29, 33) },
      'rear-alone': { order: 2, end: 'rear', people: alone, luggage: 'with', wanted: share(26, 31, 36) },
      'rear-more': { order: 3, end: 'rear', people: more, wanted: share(30, 35, 40) },
      front: { order: 4, end: 'front', people: { least: 1, most: 10 }, wanted: share(30, 34, 40) },
    },
  },
  'road-share': {
    name: 'Road, a quarter to a third',
    order: 2,
    origin: 'common practice, no source: a quarter to a third of the travel at both ends',
    rows: {
      rear: { order: 1, end: 'rear', people: { least: 1, most: 10 }, wanted: share(25, 29, 33) },
      front: { order: 2, end: 'front', people: { least: 1, most: 10 }, wanted: share(25, 29, 33) },
    },
  },
  'road-stiff-rear': {
    name: 'Road, firm rear',
    order: 3,
    origin: 'common practice, no source: front 30 to 35 %, rear about a quarter',
    rows: {
      rear: { order: 1, end: 'rear', people: { least: 1, most: 10 }, wanted: share(22, 25, 28) },
      front: { order: 2, end: 'front', people: { least: 1, most: 10 }, wanted: share(30, 32.5, 35) },
    },
  },
  'street-millimetres': {
    name: 'Street, in millimetres',
    order: 4,
    origin: 'common practice, no source: 30 to 35 mm with the rider, the fork read on its tube',
    rows: {
      rear: {
        order: 1,
        end: 'rear',
        people: { least: 1, most: 10 },
        wanted: millimetres(27, 31, 35, 'wheel'),
      },
      front: {
        order: 2,
        end: 'front',
        people: { least: 1, most: 10 },
        wanted: millimetres(30, 33, 36, 'stroke'),
      },
    },
  },
  'long-travel-road': {
    name: 'Long travel, on and off the road',
    order: 5,
    origin: 'common practice, no source: about a third of the travel with the rider, a quarter to 30 % firm',
    rows: {
      rear: { order: 1, end: 'rear', people: { least: 1, most: 10 }, wanted: share(28, 32, 36) },
      front: { order: 2, end: 'front', people: { least: 1, most: 10 }, wanted: share(25, 29, 33) },
    },
  },
};

/** The set that stands in where a job names none. */
export const usualSet = 'touring-short-travel';
