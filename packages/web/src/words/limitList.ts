import type { LimitRowView } from '@sagwright/workbench/page/limitListView';

/** Words of the list of limits. English. */
export const limitList = {
  title: 'Limits of this job, at full tank',
  working: 'Held against every load …',
  counts: (count: Readonly<Record<LimitRowView['verdict'], number>>) =>
    [
      [count.over, 'failed'],
      [count['within its ±'], 'too close to call'],
      [count.within, 'passed'],
      [count['not checked'], 'not checked, figure needed'],
    ]
      .filter(([many]) => many !== 0)
      .map(([many, standing]) => `${many} ${standing}`)
      .join(' · '),
  notChecked: 'Not checked, figure needed:',
  addFigureTo: (figure: string, limit: string) => `Add figure: ${figure}, for ${limit}`,
  room: (load: string) => `Room left, ${load}`,
} as const;
