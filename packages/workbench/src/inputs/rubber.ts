import type { RubberByTableSI, RubberSI } from '@sagwright/model/dampers/rubber';
import type { Rubber } from '@sagwright/records/schema/struts';
import { assumedRubbers, assumedRubberWidths } from './assumedRubbers.ts';
import { type Desk, note } from './desk.ts';
import { forceTable } from './forceTable.ts';
import { requireWithin } from './struts.ts';

/** The bump rubber of a shock or leg; null where there is none, or nobody knows of one, which is noted. */
export function rubberOf(
  desk: Desk,
  path: string,
  rubber: Rubber | 'none' | undefined,
  stroke: number,
): RubberSI | null {
  if (rubber === undefined) note(desk, 'rubber not known', path);
  if (rubber === undefined || rubber === 'none') return null;
  const start = startOf(desk, path, rubber, stroke);
  requireWithin(desk, `${path}.start`, 'Bump rubber: met', start, stroke);
  const { rate, hardening, rows, assumed } = rubber;
  if (rate !== undefined) {
    return {
      start,
      rate: desk.take.known(`${path}.rate`, rate, 'rubberRate'),
      hardening: hardening === undefined ? 0 : desk.take.known(`${path}.hardening`, hardening, 'rubberRate'),
    };
  }
  const table = rows === undefined ? assumedTable(desk, path, assumed!) : testedTable(desk, path, rows);
  if (stroke - start > table.compression.at(-1)! + BEYOND) note(desk, 'rubber carried on', path);
  return { start, ...table };
}

/** So far full bump may press a rubber past its table before that is said [m]: less than anybody reads. */
const BEYOND = 5e-4;

type Table = Pick<RubberByTableSI, 'compression' | 'force'>;

function testedTable(desk: Desk, path: string, rows: NonNullable<Rubber['rows']>): Table {
  const why = 'forces of a tested rubber, all together: it follows temperature, set and speed';
  return forceTable(desk, `${path}.rows`, rows, { halfWidth: 0.15, why });
}

function assumedTable({ take }: Desk, path: string, name: NonNullable<Rubber['assumed']>): Table {
  const why = `assumed, not measured: a made-up curve, ${name}`;
  const scale = take.workedOut(`${path}.assumed`, 1, assumedRubberWidths.force, 'share', '%', why);
  const { compression, force } = assumedRubbers[name];
  return { compression, force: force.map((each) => scale * each) };
}

/** Where it is met: as read; of an assumed one so far from full bump that full bump presses it as is usual. */
function startOf({ take }: Desk, path: string, { start, assumed }: Rubber, stroke: number): number {
  if (start !== undefined) return take.known(`${path}.start`, start, 'rubberStart');
  const pressed = take.workedOut(
    `${path}.start`,
    -assumedRubbers[assumed!].pressed,
    assumedRubberWidths.pressed,
    'length',
    'mm',
    'full bump presses it so far; assumed, not measured',
  );
  return stroke + pressed;
}
