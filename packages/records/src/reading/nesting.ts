import { type FieldPath, type Problem, problem } from '../problem.ts';

const deepest = 32;

/** Names that would reach into what every JavaScript object inherits. */
const forbidden = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * What no job can have, whatever its shape: fields nested beyond any use, and names that could change other objects.
 * Looked for before anything else touches the value, with a stack of its own.
 */
export function nestingProblems(root: unknown): Problem[] {
  const problems: Problem[] = [];
  const open: { value: unknown; path: FieldPath }[] = [{ value: root, path: [] }];
  for (let next = open.pop(); next; next = open.pop()) {
    const { value, path } = next;
    if (typeof value !== 'object' || value === null) continue;
    if (path.length >= deepest) return [problem([], 'tooDeep', deepest)];
    for (const [name, member] of Object.entries(value)) {
      const below = [...path, Array.isArray(value) ? Number(name) : name];
      if (forbidden.has(name)) problems.push(problem(below, 'forbiddenName', name));
      else open.push({ value: member, path: below });
    }
  }
  return problems;
}
