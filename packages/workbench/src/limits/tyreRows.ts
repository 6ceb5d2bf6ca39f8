import { speedOf } from '@sagwright/model/tyres/speedSymbol';
import type { JobPlan } from '../path.ts';
import { checkedRow, type LimitRow, needed, neededRow, type RowName, spreadOf } from './row.ts';

/** Speed symbol and pressure of both tyres. */
export function tyreRows(planned: JobPlan): readonly LimitRow[] {
  return (['rear', 'front'] as const).flatMap((end) => [speedRow(planned, end), pressureRow(planned, end)]);
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
    new Map([[top.path, top.deviation]]),
  );
  const found = { value: top.value, plusMinus: margin.plusMinus };
  const held = { loadCase: null, found, allowed, margin, contributions: () => contributions };
  return checkedRow(name, [held], ['symbol holds at its load']);
}

/** The pressure read against the one that is asked for: less fails. */
function pressureRow({ inputs }: JobPlan, end: 'rear' | 'front'): LimitRow {
  const name: RowName = {
    id: `${end}-tyre-pressure`,
    kind: 'tyre pressure',
    end,
    of: null,
    dimension: 'pressure',
  };
  const path = `machine.${end}.tyre`;
  const read = inputs.figures.get(`${path}.pressure`);
  const asked = inputs.figures.get(`${path}.placardPressure`);
  if (read === undefined || asked === undefined) {
    return neededRow(name, [
      ...(read === undefined ? [needed('pressure', `${path}.pressure`)] : []),
      ...(asked === undefined ? [needed('placard pressure', `${path}.placardPressure`)] : []),
    ]);
  }
  const { figure: margin, contributions } = spreadOf(
    read.value - asked.value,
    new Map([
      [read.path, read.deviation],
      [asked.path, asked.deviation],
    ]),
  );
  return checkedRow(name, [
    {
      loadCase: null,
      found: { value: read.value, plusMinus: read.halfWidth },
      allowed: { value: asked.value, plusMinus: asked.halfWidth },
      margin,
      contributions: () => contributions,
    },
  ]);
}
