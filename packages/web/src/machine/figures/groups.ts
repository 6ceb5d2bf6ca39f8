import type { JobDocument } from '@sagwright/records/schema';
import { frontGroup, rearGroup } from './endFigures.ts';
import type { Figure, FigureGroup } from './figure.ts';
import { fixedGroups } from './fixed.ts';
import { foundGroup } from './foundFigures.ts';
import { limitGroup } from './limitFigures.ts';
import { placeGroup, thingGroup } from './memberFigures.ts';
import { springGroup } from './springFigures.ts';
import { stanceGroup } from './stanceFigures.ts';

/** All that the job knows of its machine, grouped by what is read in one go. */
export function figureGroups(job: JobDocument): readonly FigureGroup[] {
  return [
    ...fixedGroups(job),
    rearGroup(job),
    frontGroup(job),
    foundGroup(job),
    springGroup(job),
    placeGroup(job),
    stanceGroup(job),
    limitGroup(job),
    thingGroup(job),
  ];
}

/** The figure at a path, or the one that lies nearest to it: a problem may speak of a part of it, or of what holds it. */
export function figureFor(
  groups: readonly FigureGroup[],
  path: string,
): { readonly group: string; readonly figure: Figure } | null {
  const exact = readInstead(path);
  const all = groups.flatMap(({ id, parts }) =>
    parts.flatMap(({ figures }) => figures.map((figure) => ({ group: id, figure }))),
  );
  const named = exact.flatMap((each) => all.filter(({ figure }) => figure.path === each));
  if (named[0] !== undefined) return named[0];
  const inCommon = (other: string): number => {
    const [mine, its] = [path.split('.'), other.split('.')];
    const differs = mine.findIndex((step, i) => step !== its[i]);
    return differs < 0 ? mine.length : differs;
  };
  const best = all.reduce<(typeof all)[number] | null>(
    (found, each) =>
      found === null || inCommon(each.figure.path) > inCommon(found.figure.path) ? each : found,
    null,
  );
  return best === null || inCommon(best.figure.path) < 2 ? null : best;
}

/** The group of what the job may not have yet, with the field where it is added; null where any other group does. */
export function groupToAddIn(path: string): { readonly group: string; readonly field: string | null } | null {
  const [, list] = /^machine\.(clearances|knobs|points|beam)\b/.exec(path) ?? [];
  return list === undefined ? null : added[list as keyof typeof added];
}

const added = {
  clearances: { group: 'limits', field: 'new-clearance.kind' },
  knobs: { group: 'limits', field: 'new-knob.end' },
  points: { group: 'stance', field: 'new-point.kind' },
  beam: { group: 'stance', field: null },
} as const;

/** The fields of a path, the best first. Some assumptions stand in for a reading that has another name. */
function readInstead(path: string): readonly string[] {
  const adjuster = path.replace(/\.preloadAtLoosest$/, '');
  if (adjuster === path) return [path];
  return ['touches', 'springLength.length', 'springLength'].map((name) => `${adjuster}.${name}`);
}
