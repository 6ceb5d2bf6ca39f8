import type { StoodSI } from '@sagwright/model/estimation/readings';
import { withoutStruts } from '@sagwright/model/plan/endPlan';
import type { PlanQuestion, SpringChoiceSI } from '@sagwright/model/plan/question';
import type { UncertainInput } from '@sagwright/model/uncertainty/inputs';
import { mergeInputs } from '@sagwright/model/uncertainty/merge';
import type { Setting } from '@sagwright/records/schema/adjusters';
import { adjusterAt } from '@sagwright/records/schema/machine';
import type { JobReading, ReadAdjusters, SagReading } from '@sagwright/records/schema/readings';
import { positionOf } from '../inputs/adjusters.ts';
import { type Part, partName } from '../inputs/convert.ts';
import type { Desk } from '../inputs/desk.ts';
import { inputsBelow, movesByPart } from '../inputs/moves.ts';
import { sidesOf } from '../inputs/sides.ts';

/** What the machine alone is called among the ways in which it stood. */
const ALONE = 'alone';

/** Which way of standing a reading belongs to: its load, and its own adjusters where it has any. */
export function stoodName(id: string, reading: JobReading): string {
  const load = reading.loadCase === undefined ? ALONE : `load ${reading.loadCase}`;
  return reading.kind === 'sag' && reading.adjusters !== undefined ? `${load}, as at ${id}` : load;
}

/** How the machine stood for a reading: as found with that load aboard, or with the adjusters where the reading says. */
export function stoodFor(desk: Desk, question: PlanQuestion, id: string, reading: JobReading): StoodSI {
  const loadCase = question.loadCases.find((each) => each.id === reading.loadCase);
  const stood: StoodSI = {
    id: stoodName(id, reading),
    machine: { ...question.machine, ...(loadCase !== undefined && { load: loadCase.load }) },
    inputs: mergeInputs(question.inputs, loadCase?.inputs ?? []),
  };
  if (reading.kind === 'scales' || reading.adjusters === undefined) return stood;
  return withAdjusters(desk, question, stood, id, reading.end, reading.adjusters);
}

/** The same with each strut of an end at a setting of its own. */
function withAdjusters(
  desk: Desk,
  question: PlanQuestion,
  stood: StoodSI,
  id: string,
  end: SagReading['end'],
  adjusters: ReadAdjusters,
): StoodSI {
  const count = stood.machine[end].struts.length;
  const springs = sidesOf(desk.job.setups.asFound[end]!, count).map(({ side }) => side.spring);
  const settings = sidesOf(adjusters, count);
  const part: Part = {
    of: 'choices',
    id,
    convert: (taken) => ({
      struts: settings.map(({ side, path }) => ({
        preload: squeezedBy(taken, `readings.${id}.adjusters.${path}`, end, side),
      })),
    }),
  };
  const { struts } = part.convert(desk) as { readonly struts: readonly { readonly preload: number }[] };
  const moves = movesByPart(desk, [part]).get(partName(part))!;
  const own = struts.map(({ preload }, i): { preload: number; inputs: readonly UncertainInput[] } => {
    const choice = question[end].choices.find((each) => each.id === springs[i]);
    const strut = `${end}.struts.${i}.`;
    const isWhole = settings[i]!.side.preload !== undefined;
    return {
      preload: isWhole ? preload : preload + (choice?.preloadAtZero ?? 0),
      inputs: [
        ...ofStrut(choice, isWhole ? `${strut}spring.` : strut),
        ...inputsBelow(moves, { [`struts.${i}.`]: [strut] }),
      ],
    };
  });
  return {
    id: stood.id,
    machine: {
      ...stood.machine,
      [end]: {
        ...stood.machine[end],
        struts: stood.machine[end].struts.map((strut, i) => ({ ...strut, preload: own[i]!.preload })),
      },
    },
    inputs: mergeInputs(withoutStruts(end, stood.inputs), ...own.map(({ inputs }) => inputs)),
  };
}

/** How much an adjuster squeezes the spring [m]: from its loosest end, or in all where the preload itself was read. */
function squeezedBy(desk: Desk, path: string, end: SagReading['end'], at: Setting): number {
  if (at.preload !== undefined) return desk.take.known(`${path}.preload`, at.preload, 'collar');
  const adjuster = adjusterAt(desk.job.machine, end);
  // Coherence saw to it that the setting is told in the adjuster's own terms.
  return positionOf(desk, end, path, adjuster, at)!;
}

/** What is uncertain of a spring on one strut: its moves below `prefix`. */
function ofStrut(choice: SpringChoiceSI | undefined, prefix: string): readonly UncertainInput[] {
  return (choice?.inputs ?? []).map((input) => ({
    ...input,
    moves: input.moves.filter(({ parameter }) => parameter.startsWith(prefix)),
  }));
}
