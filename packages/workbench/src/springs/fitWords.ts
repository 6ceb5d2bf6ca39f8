import type { Figure } from '@sagwright/model/plan/answer';
import { formatFigure } from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import type { End } from '../result/inView.ts';
import { words } from '../words/catalogue.ts';
import { springFit as say } from '../words/english/springFit.ts';
import { fieldName } from '../words/names.ts';
import type { RoomLeft } from './document.ts';
import { fitDocument } from './fit.ts';

/** Whether a spring fits its shock; nothing of a fork spring. */
export function fitSentences(planned: JobPlan, end: End, id: string, units: Units): readonly string[] {
  const fit = fitDocument(planned, end, id);
  if (fit === null) return [];
  const length = (figure: Figure): string => formatFigure(figure, 'length', units);
  const needs = (row: RoomLeft): string => words.list(row.needs.map((path) => fieldName(planned.job, path)));
  const room = ({ room: figure }: RoomLeft): string => length(sizeOf(figure!));
  const { around, spacer, loosest, tightest, atLoosest, coilBind } = fit;
  return [
    around.verdict === 'not checked'
      ? say.aroundNeeds(needs(around))
      : say.around[around.verdict](room(around)),
    ...(spacer === null ? [] : [say.spacer(length(spacer))]),
    say.loosest[atLoosest](length(atLoosest === 'loose' ? sizeOf(loosest.preload) : loosest.preload)),
    ...(loosest.length === null || tightest.length === null
      ? []
      : [say.lengths(length(loosest.length), length(tightest.length))]),
    coilBind.verdict === 'not checked'
      ? say.coilBindNeeds(needs(coilBind))
      : say.coilBind[coilBind.verdict](room(coilBind)),
  ];
}
