import type { TapeAnswer } from '@sagwright/model/rear/pointsFromTape';
import { capital } from '../words/capital.ts';
import { lengthNames, placeNames } from '../words/english/tape.ts';
import { type Desk, impossible } from './desk.ts';
import type { TapedPlaces, TapedRow } from './tapedRows.ts';

/** Tells why lengths from a tape give no points: at the length that is to be taped again, or which one is missing. */
export function tellTape(desk: Desk, { rows, answer }: TapedPlaces): void {
  switch (answer.kind) {
    case 'points':
      return;
    case 'not held':
      impossible(
        desk,
        'machine.rear.travel.tape',
        `Lengths from the tape: they leave the ${answer.part} free to move; at least ${answer.fewer} more ${answer.fewer === 1 ? 'is' : 'are'} needed, the next one to it. Each part needs two that do not pull the same way.`,
      );
      return;
    case 'too short':
      tellShort(desk, rows, answer);
      return;
    case 'do not meet': {
      const row = rows[answer.taped]!;
      impossible(
        desk,
        row.path,
        `${capital(nameOf(row))}: ${mm(row.taped.length)}, too ${answer.by < 0 ? 'short' : 'long'} by ${mm(Math.abs(answer.by))} for all the others. Tape it again, and those that end at the same bolts.`,
      );
      return;
    }
  }
}

function tellShort(
  desk: Desk,
  rows: readonly TapedRow[],
  { taped, beside, across, by }: Extract<TapeAnswer, { readonly kind: 'too short' }>,
): void {
  const [row, long] = [rows[taped]!, rows[across]!];
  const wide = `${mm(Math.abs(long.taped.length))} ${nameOf(long)}`;
  const other = beside === null ? null : rows[beside]!;
  const with_ =
    other === null ? 'it does not span' : `with ${mm(other.taped.length)} ${nameOf(other)} it does not span`;
  impossible(
    desk,
    row.path,
    `${capital(nameOf(row))}: ${mm(row.taped.length)}, too short by ${mm(by)}: ${with_} the ${wide}. Tape ${other === null ? 'both' : 'all three'} again.`,
  );
}

function nameOf({ length, taped }: TapedRow): string {
  if (taped.kind === 'between') return lengthNames.between(taped.from, taped.to);
  const [ahead, above] =
    length === null
      ? [placeNames.x, placeNames.height]
      : [lengthNames['ahead of axle'], lengthNames['above axle']];
  return taped.kind === 'ahead of axle' ? ahead(taped.of) : above(taped.of);
}

function mm(length: number): string {
  return `${(length * 1000).toFixed(1)} mm`;
}
