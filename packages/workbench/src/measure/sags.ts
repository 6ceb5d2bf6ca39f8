import type { Predicted } from '@sagwright/model/estimation/mostProbable';
import type { ReadingSI } from '@sagwright/model/estimation/readings';
import { wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import type { MachineSI } from '@sagwright/model/statics/machine';
import { halfWidthOf } from '@sagwright/model/uncertainty/spread';
import type { JobDocument } from '@sagwright/records/schema';
import { siOf } from '@sagwright/records/schema/quantity';
import type { SagReading } from '@sagwright/records/schema/readings';
import { inOrder } from '../inputs/desk.ts';
import { markOf, settledWays } from './asRead.ts';
import type { Doubted, FaultCode, SagRead } from './document.ts';
import { stoodName } from './stood.ts';

/** A band wider than this is a bind, to be found before anything is concluded [m]. Common practice, no source. */
const WIDEST_BAND = { rear: 0.006, front: 0.015 } as const;

/** What one length is to another of the same marks where inches were typed as millimetres: 25.4, give or take the sag. */
const SLIP = { least: 18, most: 36 } as const;

/**
 * Every sag reading worked out: sag, band, what the sum expects, and what its own numbers say is wrong with it.
 * before  what the machine as the job has it would show, with its slopes; null where it does not stand
 */
export function sagsOf(
  job: JobDocument,
  machine: MachineSI,
  readings: readonly ReadingSI[],
  before: Predicted | null,
): readonly SagRead[] {
  const rows = inOrder(job.readings ?? {}).flatMap(([id, reading]) =>
    reading.kind === 'sag' ? [{ id, reading }] : [],
  );
  const sags = rows.map(({ id, reading }): SagRead => {
    const { end, loadCase = null, side = null } = reading;
    const parts = sagParts(readings, id, markOf(reading));
    const sag = parts === null ? null : readSum(readings, parts);
    const band = bandOf(readings, id);
    const expected = parts === null || before === null ? null : expectedSum(before, parts);
    return {
      id,
      loadCase,
      end,
      side,
      along: machine[end].kinematics.kind === 'fork' ? 'stroke' : 'wheel',
      sag,
      expected,
      verdict: verdictOf(sag, expected),
      band,
      faults: faultsOf(machine, reading, sag, band, parts !== null),
    };
  });
  return sags.map((sag, i) => {
    const apart = sags.some((other, k) => areApart(sag, other, rows[i]!, rows[k]!));
    return apart ? { ...sag, faults: [...sag.faults, 'sides apart'] } : sag;
  });
}

function verdictOf(sag: Doubted | null, expected: Doubted | null): SagRead['verdict'] {
  if (sag === null || expected === null) return null;
  const apart = Math.abs(sag.value - expected.value);
  return apart > Math.hypot(sag.plusMinus, expected.plusMinus) ? 'apart' : 'agrees';
}

/** Places among the readings, each with its share of the figure. */
type Parts = readonly (readonly [number, number])[];

/** sag = hanging − mean of what settled; null where nothing settled, or these marks were never read hanging. */
function sagParts(readings: readonly ReadingSI[], id: string, mark: string): Parts | null {
  const own = placeOf(readings, id, 'hanging');
  const hanging =
    own >= 0
      ? own
      : readings.findIndex(({ of }) => of.kind === 'length' && of.came === 'hanging' && of.mark === mark);
  const settled = [placeOf(readings, id, 'afterPush'), placeOf(readings, id, 'afterLift')].filter(
    (i) => i >= 0,
  );
  if (hanging < 0 || settled.length === 0) return null;
  return [[hanging, 1], ...settled.map((i) => [i, -1 / settled.length] as const)];
}

/** Where a length of a reading stands among all that was read; −1 where it was not. */
function placeOf(readings: readonly ReadingSI[], id: string, field: string): number {
  return readings.findIndex((each) => each.id === `${id}.${field}`);
}

function readSum(readings: readonly ReadingSI[], parts: Parts): Doubted {
  const of = (i: number) => readings[i]!.evidence;
  return {
    value: parts.reduce((sum, [i, share]) => sum + share * of(i).value, 0),
    plusMinus: halfWidthOf(Math.hypot(...parts.map(([i, share]) => share * of(i).deviation))),
  };
}

/** The same of what the machine would show; where the marks are falls out. */
function expectedSum({ figures, byKnown }: Predicted, parts: Parts): Doubted {
  const slopes = (byKnown[0] ?? []).map((_, j) =>
    parts.reduce((sum, [i, share]) => sum + share * byKnown[i]![j]!, 0),
  );
  return {
    value: parts.reduce((sum, [i, share]) => sum + share * figures[i]!, 0),
    plusMinus: halfWidthOf(Math.hypot(...slopes)),
  };
}

function bandOf(readings: readonly ReadingSI[], id: string): Doubted | null {
  const [pushed, lifted] = [placeOf(readings, id, 'afterPush'), placeOf(readings, id, 'afterLift')];
  return pushed < 0 || lifted < 0
    ? null
    : readSum(readings, [
        [lifted, 1],
        [pushed, -1],
      ]);
}

/** What numbers alone show to be wrong with a reading. */
function faultsOf(
  machine: MachineSI,
  reading: SagReading,
  sag: Doubted | null,
  band: Doubted | null,
  hangs: boolean,
): readonly FaultCode[] {
  const { end, hanging, afterPush, afterLift } = reading;
  const faults: FaultCode[] = [];
  if (isOfAnotherUnit(reading)) return ['unit of another'];
  if (band !== null && band.value < -band.plusMinus) faults.push('lift below push');
  if (band !== null && band.value - band.plusMinus > WIDEST_BAND[end]) faults.push('band too wide');
  if (sag !== null && sag.value < -sag.plusMinus) faults.push('hangs shorter');
  if (sag !== null && sag.value - sag.plusMinus > mostShown(machine, end)) faults.push('beyond travel');
  if ((afterPush === undefined) !== (afterLift === undefined)) faults.push('settled once');
  if (!hangs && hanging === undefined) faults.push('never hanging');
  return faults;
}

function isOfAnotherUnit(reading: SagReading): boolean {
  const lengths = settledWays.flatMap(([field]) =>
    reading[field] === undefined ? [] : [siOf(reading[field])],
  );
  const ratio = Math.max(...lengths) / Math.min(...lengths);
  return ratio > SLIP.least && ratio < SLIP.most;
}

/** All that a tape can show of an end: its wheel travel, at a fork its stroke [m]. */
function mostShown(machine: MachineSI, end: SagReading['end']): number {
  const shown = machine[end];
  return shown.kinematics.kind === 'fork'
    ? shown.strokeMax
    : wheelTravelAt(shown, machine.geometry.rake, shown.strokeMax);
}

/** Left and right of the same end, read with the same load and adjusters, and apart by more than both ±. */
function areApart(
  one: SagRead,
  other: SagRead,
  own: { readonly id: string; readonly reading: SagReading },
  others: { readonly id: string; readonly reading: SagReading },
): boolean {
  if (one.end !== other.end || one.side === null || other.side === null || one.side === other.side)
    return false;
  if (stoodName('', own.reading) !== stoodName('', others.reading)) return false;
  if (JSON.stringify(own.reading.adjusters) !== JSON.stringify(others.reading.adjusters)) return false;
  if (one.sag === null || other.sag === null) return false;
  return Math.abs(one.sag.value - other.sag.value) > one.sag.plusMinus + other.sag.plusMinus;
}
