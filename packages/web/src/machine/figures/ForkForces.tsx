import type { ForkColumn, ForkStepView, ForkView } from '@sagwright/workbench/page/forkView';
import { useTable } from '../../app/useJob.ts';
import { useTold } from '../../app/useTold.ts';
import { AsTable } from '../../drawings/AsTable.tsx';
import { ForcePlot } from '../../drawings/fork/ForcePlot.tsx';
import type { ForceInput, ForceLine } from '../../drawings/fork/forcePlot.ts';
import type { DrawingTable } from '../../drawings/table.ts';
import { fork as words } from '../../words/fork.ts';
import type { OpenSheet } from '../sheets.ts';
import { ForcesAt } from './ForcesAt.tsx';

/** What works in the fork along its travel: all together, and the air alone with more and less oil. */
export default function ForkForces({ onSheet }: { readonly onSheet: OpenSheet }) {
  const fork = useTold(useTable().fork); // null, too, where the front is no fork
  if (fork === null) return null;
  return (
    <section className="sheet-part">
      <h3>{words.forces}</h3>
      <p>{words.forcesNote}</p>
      <ForcePlot input={plotOf(fork, [wholeLine(fork), springLine(fork)])} />
      <ForcePlot input={plotOf(fork, airLines(fork))} />
      {fork.sentences.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <ForcesAt fork={fork} onSheet={onSheet} />
      <AsTable table={() => tableOf(fork)} of={words.forces.toLowerCase()} />
    </section>
  );
}

function plotOf({ lengthUnit, forceUnit, steps }: ForkView, lines: readonly ForceLine[]): ForceInput {
  return { lengthUnit, forceUnit, travel: steps.map(({ travel }) => travel), lines };
}

function lineOf(
  { steps }: ForkView,
  id: keyof typeof words.lines,
  name: string,
  force: (step: ForkStepView) => number | null,
  doubt: ((step: ForkStepView) => number) | null = null,
): ForceLine {
  return { id, name, force: steps.map(force), doubt: doubt === null ? null : steps.map(doubt) };
}

function wholeLine(fork: ForkView): ForceLine {
  return lineOf(
    fork,
    'whole',
    words.lines.whole,
    ({ whole }) => whole,
    ({ wholeDoubt }) => wholeDoubt,
  );
}

function springLine(fork: ForkView): ForceLine {
  return lineOf(fork, 'springs', words.lines.springs, ({ springs }) => springs);
}

function airLines(fork: ForkView): readonly ForceLine[] {
  const { lines } = words;
  return [
    lineOf(
      fork,
      'air',
      lines.air,
      ({ air }) => air,
      ({ airDoubt }) => airDoubt,
    ),
    ...(fork.steps.some(({ airQuick }) => airQuick !== null)
      ? [lineOf(fork, 'airQuick', lines.airQuick, ({ airQuick }) => airQuick)]
      : []),
    lineOf(fork, 'moreOil', lines.moreOil(fork.oilStep), ({ moreOil }) => moreOil),
    lineOf(fork, 'lessOil', lines.lessOil(fork.oilStep), ({ lessOil }) => lessOil),
  ];
}

function tableOf({ lengthUnit, forceUnit, oilStep, steps }: ForkView): DrawingTable {
  const { lines } = words;
  const columns: readonly (readonly [ForkColumn, string])[] = [
    ['travel', `${words.travel}, ${lengthUnit}`],
    ['stroke', `${words.stroke}, ${lengthUnit}`],
    ['springs', `${lines.springs}, ${forceUnit}`],
    ['air', `${lines.air}, ${forceUnit}`],
    ['airQuick', `${lines.airQuick}, ${forceUnit}`],
    ['moreOil', `${lines.moreOil(oilStep)}, ${forceUnit}`],
    ['lessOil', `${lines.lessOil(oilStep)}, ${forceUnit}`],
    ['rubber', `${words.rubber}, ${forceUnit}`],
    ['topOut', `${words.topOut}, ${forceUnit}`],
    ['whole', `${lines.whole}, ${forceUnit}`],
  ];
  return {
    caption: words.forcesNote,
    headings: columns.map(([, heading]) => heading),
    rows: steps.map(({ words: cells }) => columns.map(([column]) => cells[column])),
  };
}
