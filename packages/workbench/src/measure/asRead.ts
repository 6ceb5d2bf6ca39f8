import type { ReadingSI } from '@sagwright/model/estimation/readings';
import type { Quantity } from '@sagwright/records/schema/quantity';
import type { SagReading } from '@sagwright/records/schema/readings';
import { type Desk, inOrder } from '../inputs/desk.ts';
import type { ReadingKind } from '../inputs/widths.ts';
import { stoodName } from './stood.ts';

/** Nothing is read finer than this, whatever ± was typed: a tenth of a millimetre, a tenth of a kilogram. */
const FINEST = { length: 1e-4, mass: 0.1 } as const;

/** The three numbers of a sag, by their fields. */
export const settledWays = [
  ['hanging', 'hanging'],
  ['afterPush', 'pressed'],
  ['afterLift', 'lifted'],
] as const;

/** Readings with the same words, end and side are from the same marks. */
export function markOf({ end, side, marks }: SagReading): string {
  return [end, side ?? 'middle', marks].join(' · ');
}

/** Every figure that was read, in SI, with its ± and what it is of. */
export function readingsOf(desk: Desk): readonly ReadingSI[] {
  return inOrder(desk.job.readings ?? {}).flatMap(([id, reading]): ReadingSI[] => {
    const stood = stoodName(id, reading);
    if (reading.kind === 'scales') {
      return (['front', 'rear'] as const).flatMap((end): ReadingSI[] =>
        taken(desk, `${id}.${end}`, reading[end], 'scale').map((evidence) => ({
          id: `${id}.${end}`,
          stood,
          end,
          of: { kind: 'scale' },
          evidence,
        })),
      );
    }
    const kind = reading.end === 'front' ? 'forkTape' : 'tape';
    return settledWays.flatMap(([field, came]): ReadingSI[] =>
      taken(desk, `${id}.${field}`, reading[field], kind).map((evidence) => ({
        id: `${id}.${field}`,
        stood,
        end: reading.end,
        of: { kind: 'length', mark: markOf(reading), came },
        evidence,
      })),
    );
  });
}

/** What dimension a reading has. */
export function readDimension({ of }: ReadingSI): 'length' | 'mass' {
  return of.kind === 'scale' ? 'mass' : 'length';
}

function taken(
  { take }: Desk,
  id: string,
  typed: Quantity | undefined,
  kind: ReadingKind,
): readonly ReadingSI['evidence'][] {
  if (typed === undefined) return [];
  const path = `readings.${id}`;
  const value = take.known(path, typed, kind);
  const finest = FINEST[kind === 'scale' ? 'mass' : 'length'];
  return [{ says: 'is', value, deviation: Math.max(finest, take.figures.get(path)!.deviation) }];
}
