import type { PointLength } from '@sagwright/records/schema/pointTape';
import type { ListedLength } from '@sagwright/workbench/result/tapeList';
import { struts } from '../../words/figures.ts';

/** What a length of the tape is called on the page. */
export function lengthName(each: PointLength | ListedLength['wanted']): string {
  const { names, parts } = struts.tape;
  return each.kind === 'between'
    ? names.between(parts[each.from], parts[each.to])
    : names[each.kind](parts[each.of]);
}
