import type { PageView } from '@sagwright/workbench/page/shapes';
import { choose as words } from '../words/choose.ts';

/** What the Choose tab says of itself: the rear spring that is planned and who says so; that nothing fits. */
export function chooseSays(view: PageView | null): string {
  if (view === null) return '';
  const { rear } = view;
  const spring = rear.springs.find(({ id }) => id === rear.planned);
  if (spring === undefined || rear.plannedBy === 'as found')
    return rear.springs.length > 0 ? words.nothingFits : '';
  return `${spring.rate.value} ${words.by[rear.plannedBy]}`;
}
