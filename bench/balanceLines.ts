import { FRONT_TRAVEL, REAR_TRAVEL } from '@sagwright/model/statics/gradient';
import type { LoadedMachine } from './machines.ts';
import { pythonWithScipy, type ScipyAnswer, scipySolves } from './scipy.ts';
import { type Pace, type Solved, solvedLoads, solvesPerSecond } from './solves.ts';
import { type Line, rounded } from './table.ts';

const PACE: Pace = { seconds: 0.3, rounds: 3 };
const AIM_PER_SECOND = 250_000;
const AIM_RATIO = 100;
/** How far two solutions of one load may lie apart [m]; both leave far less than this. */
const TRAVEL_APART = 1e-6;

/** A machine, what came out, and how fast. */
interface Measured {
  readonly loaded: LoadedMachine;
  readonly solved: readonly Solved[];
  readonly perSecond: number;
}

/** Load cases solved in a second, and how many times that is what SciPy solves. */
export function balanceLines(machines: readonly LoadedMachine[]): readonly Line[] {
  for (const loaded of machines) solvesPerSecond(loaded, { seconds: 0.2, rounds: 1 });
  const measured = machines.map((loaded) => ({
    loaded,
    solved: solvedLoads(loaded),
    perSecond: solvesPerSecond(loaded, PACE),
  }));
  return [
    { name: 'Load cases solved from a cold start' },
    ...measured.map(({ loaded, perSecond }) => ({
      name: nameOf(loaded),
      figure: rounded(perSecond),
      unit: 'solves/s',
      aim: `>= ${rounded(AIM_PER_SECOND)}`,
    })),
    ...scipyLines(measured.filter(({ solved }) => solved.every((rest) => rest.free))),
  ];
}

function nameOf({ name, loads }: LoadedMachine): string {
  return loads.length === 1 ? name : `${name}, ${loads.length} loads in turn`;
}

/** A root finder knows no stops: only machines whose wheels are all free are compared. */
function scipyLines(measured: readonly Measured[]): readonly Line[] {
  const python = pythonWithScipy();
  if (python === null)
    return [{ name: 'Not compared with SciPy: no python3 here has it (pip install scipy)' }];
  const cases = measured.flatMap(({ loaded }) =>
    loaded.loads.map((load) => ({ machine: loaded.machine, load })),
  );
  const answer = scipySolves(python, cases, PACE);
  requireSame(measured, answer);
  let place = 0;
  let [ours, scipys] = [0, 0];
  const ratios = measured.map(({ loaded, perSecond }): Line => {
    const answers = answer.answers.slice(place, place + loaded.loads.length);
    place += answers.length;
    const own = answers.length / perSecond;
    const other = answers.reduce((sum, each) => sum + 1 / each.perSecond, 0);
    ours += own;
    scipys += other;
    return { name: nameOf(loaded), figure: rounded(other / own), unit: '× SciPy', aim: `>= ${AIM_RATIO}` };
  });
  return [
    {
      name: `SciPy ${answer.scipy}, optimize.root, hybr, tol ${answer.tolerance}; residual in Python ${answer.python}`,
    },
    {
      name: `the same ${cases.length} loads in turn`,
      figure: rounded(cases.length / scipys),
      unit: 'solves/s',
    },
    ...ratios,
    { name: 'all in turn', figure: rounded(scipys / ours), unit: '× SciPy', aim: `>= ${AIM_RATIO}` },
  ];
}

/** Stops, naming both figures, where SciPy finds another rest: the speed of a wrong answer is worth nothing. */
function requireSame(measured: readonly Measured[], { answers }: ScipyAnswer): void {
  const ours = measured.flatMap(({ loaded, solved }) => solved.map((rest) => ({ loaded, rest })));
  ours.forEach(({ loaded, rest }, i) => {
    for (const place of [REAR_TRAVEL, FRONT_TRAVEL]) {
      const [own, other] = [rest.state[place]!, answers[i]!.state[place]!];
      if (!(Math.abs(own - other) <= TRAVEL_APART)) {
        throw new Error(
          `${loaded.name}: travel ${own} m here, ${other} m by SciPy; they must agree to 1e-6 m`,
        );
      }
    }
  });
}
