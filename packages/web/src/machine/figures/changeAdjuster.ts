import { at, type Change, type Edit, write } from '../../job/edits.ts';
import { formerKind } from '../../job/formerKind.ts';

/**
 * Another kind of adjuster: as it was if it was of that kind before, else with what both kinds know. Where the sides stood says nothing
 * about the new one, but the preload read at the spring does; what else it needs is asked for at its fields.
 */
export function changeAdjuster(
  document: unknown,
  path: string,
  kind: string,
  done: readonly Change[],
): readonly Edit[] {
  const steps = path.split('.');
  if (at(document, [...steps, 'kind']) === kind) return [];
  const former = formerKind(document, done, steps, kind);
  if (former !== null) return former;
  const end = path.startsWith('machine.front') ? 'front' : 'rear';
  const setting = ['setups', 'asFound', end];
  const sides = Object.keys((at(document, setting) as object | undefined) ?? {});
  return [
    write(document, steps, { ...picked(at(document, steps), keptBy[kind] ?? []), kind }),
    ...sides.map((side) => {
      const stands = [...setting, side, 'at'];
      return write(document, stands, picked(at(document, stands), ['preload']));
    }),
  ];
}

const keptBy: Readonly<Record<string, readonly string[]>> = { collar: ['lead'], cap: ['lead'] };

/** Of a group, what it has of these names. */
function picked(group: unknown, names: readonly string[]): Readonly<Record<string, unknown>> {
  const all = Object.entries(typeof group === 'object' && group !== null ? group : {});
  return Object.fromEntries(all.filter(([name]) => names.includes(name)));
}
