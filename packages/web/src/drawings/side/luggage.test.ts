import { describe, expect, it } from 'vitest';
import { nineThings } from '../invented.ts';
import { parcelsOf } from './luggage.ts';

const by = (id: string, carried = nineThings) => parcelsOf(carried).find((parcel) => parcel.id === id)!;

describe('parcels', () => {
  it('stand on what carries them, with their mass centres in their middles', () => {
    const box = by('top box');
    const roll = by('bed roll');
    const carrier = nineThings.find((thing) => thing.id === 'carrier')!;
    expect(box.bottomMm).toBeCloseTo(carrier.heightMm, 9);
    expect(roll.bottomMm).toBeCloseTo(box.topMm, 9);
    for (const parcel of [box, roll]) {
      const thing = nineThings.find(({ id }) => id === parcel.id)!;
      expect((parcel.bottomMm + parcel.topMm) / 2).toBeCloseTo(thing.heightMm, 9);
      expect(parcel.xMm).toBe(thing.xMm);
    }
  });

  it('have a usual size where nothing is said to carry them', () => {
    const loose = nineThings.map((thing) => ({ ...thing, standsOn: null }));
    expect(by('bed roll', loose).topMm - by('bed roll', loose).bottomMm).toBe(130);
  });

  it('come to an end where two are said to stand on each other', () => {
    const [a, b] = nineThings.filter((thing) => thing.kind === 'item').slice(0, 2);
    const round = [
      { ...a!, standsOn: b!.id },
      { ...b!, standsOn: a!.id },
    ];
    expect(
      parcelsOf(round)
        .map((parcel) => parcel.id)
        .toSorted(),
    ).toEqual([a!.id, b!.id].toSorted());
  });
});
