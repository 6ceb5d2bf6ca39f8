import type { EndName } from '../statics/prepared.ts';
import type { UncertainInput } from '../uncertainty/inputs.ts';
import type { AdjusterSetting } from './adjuster.ts';

/** Something that is uncertain about setting, by the name under which the job notes it. */
export interface SettingDoubt {
  readonly name: string;
  readonly deviation: number;
}

/**
 * What is uncertain about where an adjuster stands that is set by counting: the advance of a turn or a click (`value` [m], all positions
 * in proportion to it), or the rise of each step.
 */
export type AdjusterDoubt =
  | (SettingDoubt & { readonly kind: 'in proportion'; readonly value: number })
  | { readonly kind: 'by step'; readonly steps: readonly SettingDoubt[] };

/**
 * The inputs that a counted setting brings:  ∂a/∂lead = a/lead,  ∂a/∂rise = 1 at its own step; they move the preload of every strut
 * of the end. None where it is set by what is read between two faces (`undefined`): hands set that as near as they read it.
 */
export function settingInputs(
  doubt: AdjusterDoubt | undefined,
  name: EndName,
  { position, step }: AdjusterSetting,
  count: number,
): readonly UncertainInput[] {
  if (doubt === undefined) return [];
  const input = ({ name: path, deviation }: SettingDoubt, by: number): UncertainInput => ({
    name: path,
    deviation,
    moves: Array.from({ length: count }, (_, i) => ({ parameter: `${name}.struts.${i}.preload`, by })),
  });
  const inputs =
    doubt.kind === 'in proportion'
      ? [input(doubt, position / doubt.value)]
      : step === null
        ? []
        : [input(doubt.steps[step]!, 1)];
  return inputs.filter(({ deviation, moves }) => deviation > 0 && moves.some(({ by }) => by !== 0));
}
