import type { Figure } from '@sagwright/model/plan/answer';
import { formatFigure } from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { rubber as say } from '../words/english/rubber.ts';
import { loadName } from '../words/names.ts';
import type { LeftToRubber, RubberDocument } from './document.ts';

/** Where a bump rubber is met, what it bears, and which loads rest on it as planned. */
export function rubberSentences({ job }: JobPlan, rubber: RubberDocument, units: Units): readonly string[] {
  const length = (figure: Figure): string => formatFigure(figure, 'length', units);
  const force = (figure: Figure): string => formatFigure(figure, 'force', units);
  const loads = rubber.loads.flatMap(({ loadCase, planned }) =>
    planned === null ? [] : [{ name: loadName(job, loadCase), ...planned }],
  );
  const touching = loads.filter(({ verdict }) => verdict !== 'clear');
  return [
    say.met(length(rubber.stroke), length(rubber.travel)),
    say.fullBump(length(rubber.pressed), force(rubber.force), force(rubber.atWheel)),
    ...(rubber.assumed === null ? [] : [say.assumed(rubber.assumed)]),
    ...touching.map(({ name, left, verdict }) =>
      verdict === 'rests on it' ? say.rests(name, length(sizeOf(left))) : say.near(name, length(left)),
    ),
    ...(touching.length > 0 || loads.length === 0 ? [] : [nearestWords(loads, length)]),
  ];
}

function nearestWords(
  loads: readonly (LeftToRubber & { readonly name: string })[],
  length: (figure: Figure) => string,
): string {
  const { name, left } = loads.reduce((a, b) => (b.left.value < a.left.value ? b : a));
  return say.clear(name, length(left));
}
