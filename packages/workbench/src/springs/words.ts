import type { Figure, SpringPlan } from '@sagwright/model/plan/answer';
import { formatFigure } from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { springs as say } from '../words/english/springs.ts';
import type { MarkedDocument, StageDocument } from './document.ts';
import { rateDocument } from './rate.ts';

/** Where a spring's rate comes from, and how far it is to be trusted; nothing of one that is plainly marked or tested. */
export function rateSentences(planned: JobPlan, spring: SpringPlan, units: Units): readonly string[] {
  const { by, plusMinus, stages, marked } = rateDocument(planned, spring);
  return [
    ...(by === 'coil' ? [say.coil(formatFigure({ value: spring.rate, plusMinus }, 'rate', units))] : []),
    ...(stages.length > 0
      ? [say.stages(say.inTurn(stages.map((stage, i) => stageWords(stage, i === stages.length - 1, units))))]
      : []),
    ...(marked === null ? [] : markedWords(marked, units)),
  ];
}

/** "109 ± 9 N/mm by its coil": a rate that was worked out carries its ± and where it is from; null for any other. */
export function workedOutRate(planned: JobPlan, spring: SpringPlan, units: Units): string | null {
  const mark = rateMark(planned, spring.spring);
  if (mark === null) return null;
  const { plusMinus } = rateDocument(planned, spring);
  return say.worked(formatFigure({ value: spring.rate, plusMinus }, 'rate', units), mark);
}

/** What stands beside a rate that was worked out; null beside any other. */
function rateMark({ job }: JobPlan, id: string): string | null {
  const rate = job.springs[id]?.rate;
  if (rate?.kind === 'wound') return say.mark.winding;
  return rate?.kind === 'coil' && rate.counts !== 'marked' ? say.mark.coil : null;
}

function stageWords({ rate, to, force }: StageDocument, isLast: boolean, units: Units): string {
  return (isLast ? say.lastStage : say.stage)(
    formatFigure(rate, 'rate', units),
    formatFigure(to, 'length', units),
    formatFigure(force, 'force', units),
  );
}

function markedWords(
  { marked, coil, difference, verdict, trust, counts }: MarkedDocument,
  units: Units,
): readonly string[] {
  const rate = (figure: Figure): string => formatFigure(figure, 'rate', units);
  return [
    say[verdict](rate(marked), rate(coil), rate(sizeOf(difference))),
    say.trust[trust],
    say.counts[counts],
  ];
}
