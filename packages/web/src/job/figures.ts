import type { Quantity } from '@sagwright/records/schema/quantity';
import { at, type Edit, write } from './edits.ts';

/** Figures that the job takes together or not at all: a place's x with its height, the shaft of a gas charge with its pressure. */
export interface Together {
  /** Path of what holds them. */
  readonly at: string;
  /** Those without which the others cannot stand there, by their last name, with the usual figure where there is one. */
  readonly needs: Readonly<Record<string, Quantity | null>>;
}

/**
 * Writes a figure at its path, or takes it away. What it needs beside it and nobody has given is written too, as the sum
 * already takes it: the usual figure with its whole ±. Taken away, such a group goes back to its usual figures altogether; one
 * without them loses this figure only.
 */
export function writeFigure(
  document: unknown,
  path: string,
  quantity: Quantity | null,
  together: Together | null = null,
): readonly Edit[] {
  const steps = path.split('.');
  const own = write(document, steps, quantity ?? undefined);
  if (together === null) return [own];
  const holder = together.at.split('.');
  const needs = Object.entries(together.needs);
  if (quantity === null) {
    const whole = needs.every(([, usual]) => usual !== null) && steps.at(-1)! in together.needs;
    return whole || isAlone(at(document, holder), steps.at(-1)!)
      ? [write(document, holder, undefined)]
      : [own];
  }
  const missing = needs.filter(
    ([name, usual]) =>
      usual !== null && name !== steps.at(-1) && at(document, [...holder, name]) === undefined,
  );
  return [own, ...missing.map(([name, usual]) => write(document, [...holder, name], usual))];
}

function isAlone(holder: unknown, name: string): boolean {
  return typeof holder === 'object' && holder !== null && Object.keys(holder).every((key) => key === name);
}
