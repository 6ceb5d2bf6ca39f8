import { monotoneCubic } from '@sagwright/model/numerics/monotoneCubic';
import type { RatioSI } from '@sagwright/model/rear/kinematics';
import { damperAt, wheelTravelAt } from '@sagwright/model/rear/wheelMotion';
import { REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import type { EndSI } from '@sagwright/model/statics/machine';
import { type LoadedMachine, linkageMachine } from './machines.ts';
import { type Pace, solvedLoads, solvesPerSecond } from './solves.ts';
import { type Line, rounded } from './table.ts';

const PACE: Pace = { seconds: 0.3, rounds: 3 };
/** Rows of the table: as many as a drawn curve has, so that looking one up costs what it costs in a job. */
const ROWS = 20;
/** How far the two solutions of one load may lie apart [m]: what so few rows leave. */
const TRAVEL_APART = 1e-4;

/** What a rear with rocker and link takes, beside the same rear drawn as a table; stops where the two rest differently. */
export function linkageLines(): readonly Line[] {
  const loaded = linkageMachine();
  const drawn = drawnAsTable(loaded);
  requireSame(loaded, drawn);
  for (const each of [loaded, drawn]) solvesPerSecond(each, { seconds: 0.2, rounds: 1 });
  const own = 1 / solvesPerSecond(loaded, PACE);
  const table = 1 / solvesPerSecond(drawn, PACE);
  return [
    { name: 'A rear with rocker and link, worked out from its hard points' },
    { name: 'time of one load', figure: rounded(1e6 * own), unit: 'µs' },
    { name: `drawn as a table of ${ROWS} rows`, figure: rounded(1e6 * table), unit: 'µs' },
    { name: 'hard points over table', figure: (own / table).toFixed(2), unit: '×', aim: '<= 2' },
  ];
}

function drawnAsTable(loaded: LoadedMachine): LoadedMachine {
  const { machine } = loaded;
  const rear = { ...machine.rear, kinematics: tableOf(machine.rear) };
  return { ...loaded, machine: { ...machine, rear } };
}

function tableOf(rear: EndSI): RatioSI {
  const travelMax = wheelTravelAt(rear, 0, rear.strokeMax);
  const at = { stroke: 0, motionRatio: 0, ratioSlope: 0 };
  const travels = Array.from({ length: ROWS }, (_, i) => (travelMax * i) / (ROWS - 1));
  const strokes = travels.map((travel) => {
    damperAt(rear, 0, travel, at);
    return at.stroke;
  });
  return { kind: 'table', curve: monotoneCubic(travels, strokes), scale: 1 };
}

function requireSame(one: LoadedMachine, other: LoadedMachine): void {
  const others = solvedLoads(other);
  solvedLoads(one).forEach(({ state }, i) => {
    const [own, drawn] = [state[REAR_TRAVEL]!, others[i]!.state[REAR_TRAVEL]!];
    if (!(Math.abs(own - drawn) <= TRAVEL_APART)) {
      throw new Error(
        `rear travel ${own} m by hard points, ${drawn} m by their table; they must agree to 1e-4 m`,
      );
    }
  });
}
