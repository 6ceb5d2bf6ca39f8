import { speedOf } from '@sagwright/model/tyres/speedSymbol';
import type { JobPlan } from '../path.ts';
import { needed } from './needs.ts';
import { checkedRow, type LimitRow, neededRow, type RowName, spreadOf } from './row.ts';

/** Speed symbol of both tyres, and their pressure against the least and the most. */
export function tyreRows(planned: JobPlan): readonly LimitRow[] {
  return (['rear', 'front'] as const).flatMap((end) => [
    speedRow(planned, end),
    pressureRow(planned, end, 'tyre pressure'),
    pressureRow(planned, end, 'most pressure'),
  ]);
}

/** The symbol against the machine's top speed. */
function speedRow({ job, inputs }: JobPlan, end: 'rear' | 'front'): LimitRow {
  const name: RowName = { id: `${end}-tyre-speed`, kind: 'tyre speed', end, of: null, dimension: 'speed' };
  const symbol = job.machine[end].tyre?.speedSymbol;
  const top = inputs.figures.get('machine.limits.topSpeed');
  if (symbol === undefined || top === undefined) {
    return neededRow(name, [
      ...(symbol === undefined ? [needed('speed symbol', `machine.${end}.tyre.speedSymbol`)] : []),
      ...(top === undefined ? [needed('top speed', 'machine.limits.topSpeed')] : []),
    ]);
  }
  const allowed = { value: speedOf(symbol), plusMinus: 0 };
  const { figure: margin, contributions } = spreadOf(
    allowed.value - top.value,
    new Map([[top.path, -top.deviation]]),
  );
  const found = { value: top.value, plusMinus: margin.plusMinus };
  const held = { loadCase: null, found, allowed, margin, contributions: () => contributions };
  return checkedRow(name, [held], ['symbol holds at its load']);
}

/** What a pressure is held against: less than the placard's fails, and more than the most on the tyre's wall. */
const bounds = {
  'tyre pressure': { id: 'tyre-pressure', field: 'placardPressure', need: 'placard pressure', over: 1 },
  'most pressure': { id: 'tyre-most-pressure', field: 'mostPressure', need: 'most pressure', over: -1 },
} as const;

/** The pressure read, cold. */
function pressureRow({ inputs }: JobPlan, end: 'rear' | 'front', kind: keyof typeof bounds): LimitRow {
  const { id, field, need, over } = bounds[kind];
  const name: RowName = { id: `${end}-${id}`, kind, end, of: null, dimension: 'pressure' };
  const path = `machine.${end}.tyre`;
  const read = inputs.figures.get(`${path}.pressure`);
  const bound = inputs.figures.get(`${path}.${field}`);
  if (read === undefined || bound === undefined) {
    return neededRow(name, [
      ...(read === undefined ? [needed('pressure', `${path}.pressure`)] : []),
      ...(bound === undefined ? [needed(need, `${path}.${field}`)] : []),
    ]);
  }
  const { figure: margin, contributions } = spreadOf(
    over * (read.value - bound.value),
    new Map([
      [read.path, over * read.deviation],
      [bound.path, -over * bound.deviation],
    ]),
  );
  const found = { value: read.value, plusMinus: read.halfWidth };
  const allowed = { value: bound.value, plusMinus: bound.halfWidth };
  return checkedRow(name, [{ loadCase: null, found, allowed, margin, contributions: () => contributions }]);
}
