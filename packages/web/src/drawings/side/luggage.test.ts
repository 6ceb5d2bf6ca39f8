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

  it('have no outline where they are packed in a hard case', () => {
    const box = nineThings.find((thing) => thing.id === 'top box')!;
    const shell = { ...box, heightMm: 940 };
    const stove = { ...box, id: 'stove', heightMm: 1010, standsOn: box.id };
    const carried = [...nineThings.filter(({ kind }) => kind === 'place'), shell, stove];
    expect(parcelsOf(carried).map(({ id }) => id)).toEqual([box.id]);
  });

  it('are one case where a case and what is in it are two things', () => {
    // The shell lies on the carrier with its mass centre low; what is in it is said to stand on the shell.
    const shell = {
      ...nineThings.find((thing) => thing.id === 'top box')!,
      place: 'rack' as const,
      heightMm: 930,
    };
    const stove = { ...shell, id: 'stove', place: 'rear box' as const, heightMm: 1020, standsOn: shell.id };
    const carrier = nineThings.find((thing) => thing.id === 'carrier')!;
    const parcels = parcelsOf([carrier, shell, stove]);
    expect(parcels.map(({ id }) => id)).toEqual(['stove']);
    expect(parcels[0]!.bottomMm).toBeLessThanOrEqual(carrier.heightMm);
    expect(parcels[0]!.topMm).toBeGreaterThan(stove.heightMm);
  });

  it('hang in the air over what they stand on where their mass centres lie too high for a box', () => {
    const high = nineThings.map((thing) => (thing.id === 'bed roll' ? { ...thing, heightMm: 1500 } : thing));
    expect(by('bed roll', high).bottomMm).toBeGreaterThan(by('bed roll', high).floorMm! + 100);
    expect(by('bed roll', high).topMm - by('bed roll', high).bottomMm).toBe(130);
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
