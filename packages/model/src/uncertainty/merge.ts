import type { UncertainInput } from './inputs.ts';

/** Inputs together; one that comes in several lists (the same name) is one input with all its moves. */
export function mergeInputs(...lists: readonly (readonly UncertainInput[])[]): readonly UncertainInput[] {
  const merged = new Map<string, UncertainInput>();
  for (const input of lists.flat()) {
    const before = merged.get(input.name);
    merged.set(
      input.name,
      before === undefined ? input : { ...before, moves: [...before.moves, ...input.moves] },
    );
  }
  return [...merged.values()];
}
