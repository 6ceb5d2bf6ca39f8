import { gapAtBump } from '@sagwright/model/limits/clearance';
import { asChosen } from '@sagwright/model/plan/question';
import type { Clearance } from '@sagwright/records/schema/limits';
import { inOrder } from '../inputs/desk.ts';
import type { JobPlan } from '../path.ts';
import { type Slopes, slopesOf, standing } from '../why/standing.ts';
import { needed } from './needs.ts';
import { checkedRow, type LimitRow, neededRow, type RowName, spreadOf } from './row.ts';

/** What nearly every machine has: told as needed where nobody measured it. Common practice, no source. */
const usual: readonly (readonly [Clearance['end'], Clearance['kind']])[] = [
  ['rear', 'tyre and guard'],
  ['rear', 'belt or chain'],
  ['rear', 'exhaust'],
  ['rear', 'bags'],
  ['rear', 'hose'],
  ['front', 'tyre and guard'],
  ['front', 'hose'],
];

/** Room at full bump, with the shock length that is chosen: what was measured first, then what should be. */
export function clearanceRows(planned: JobPlan): readonly LimitRow[] {
  const { machine } = planned.job;
  const measured = inOrder(machine.clearances ?? {});
  const isMeasured = (end: Clearance['end'], kind: Clearance['kind']): boolean =>
    measured.some(([, each]) => each.end === end && each.kind === kind);
  const hasBags = Object.values(machine.places).some(({ kind }) => kind === 'side cases');
  const missing = usual.filter(
    ([end, kind]) =>
      !isMeasured(end, kind) &&
      !(kind === 'bags' && !hasBags) &&
      !(kind === 'belt or chain' && machine.rear.drive?.kind === 'shaft'),
  );
  const bump = measured.length === 0 ? null : bumpOf(planned);
  return [
    ...measured.map(([id, each]) => clearanceRow(planned, id, each, bump)),
    ...missing.map(([end, kind]) =>
      neededRow(
        {
          id: `usual-clearance-${end}-${kind.replaceAll(' ', '-')}`,
          kind: 'clearance',
          end,
          of: kind,
          dimension: 'length',
        },
        [needed('gap', 'machine.clearances')],
      ),
    ),
  ];
}

/** Wheel travels at full bump [m], and how they move with each input. */
interface Bump {
  readonly rear: number;
  readonly front: number;
  readonly slopes: Slopes;
}

/** Null where the machine alone has no rest: then nothing tells how its travel moves. */
function bumpOf({ inputs }: JobPlan): Bump | null {
  const { machine, inputs: uncertain } = asChosen(inputs.question);
  const alone = standing(machine, null, uncertain);
  if (alone === null) return null;
  const slopes = slopesOf(
    alone,
    (prepared, _state, out) => {
      out[0] = prepared.rearTravelMax;
      out[1] = prepared.frontTravelMax;
    },
    2,
  );
  const { rearTravelMax, frontTravelMax } = alone.prepared;
  return { rear: rearTravelMax, front: frontTravelMax, slopes };
}

function clearanceRow(planned: JobPlan, id: string, clearance: Clearance, bump: Bump | null): LimitRow {
  const { end, readings, keep } = clearance;
  const name: RowName = { id: `clearance-${id}`, kind: 'clearance', end, of: id, dimension: 'length' };
  const path = `machine.clearances.${id}`;
  const { figures } = planned.inputs;
  const at = (i: number, part: 'travel' | 'gap') => figures.get(`${path}.readings.${i}.${part}`)!;
  const read = readings.map((_, i) => ({ travel: at(i, 'travel').value, gap: at(i, 'gap').value }));
  const found = bump === null ? null : gapAtBump(read, bump[end]);
  if (bump === null || found === null) return neededRow(name, [needed('gap at bump', `${path}.readings`)]);
  const parts = new Map<string, number>();
  const add = (input: string, slope: number): void => {
    if (slope !== 0) parts.set(input, (parts.get(input) ?? 0) + slope);
  };
  for (const { reading, gap, travel } of found.byReading) {
    add(at(reading, 'gap').path, gap * at(reading, 'gap').deviation);
    add(at(reading, 'travel').path, travel * at(reading, 'travel').deviation);
  }
  const place = end === 'rear' ? 0 : 1;
  for (const [input, slopes] of bump.slopes) add(input, found.byTravelMax * slopes[place]!);
  const gap = spreadOf(found.gap, parts);
  const kept = keep === undefined ? null : figures.get(`${path}.keep`)!;
  if (kept !== null) add(kept.path, -kept.deviation);
  const margin = spreadOf(found.gap - (kept?.value ?? 0), parts);
  const allowed = { value: kept?.value ?? 0, plusMinus: kept?.halfWidth ?? 0 };
  return checkedRow(
    name,
    [
      {
        loadCase: null,
        found: gap.figure,
        allowed,
        margin: margin.figure,
        contributions: () => margin.contributions,
      },
    ],
    found.byReading.length > 1 ? ['line carried on'] : [],
  );
}
