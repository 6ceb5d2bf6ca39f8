import type { RearWorkDocument } from '@sagwright/workbench/fitting/document';
import { type Edit, write } from '../job/edits.ts';

const DONE = ['fitting', 'rear', 'done'] as const;

/**
 * A step done now. What was done before it and should not have been is thereby undone, or waits to be done again: it is no
 * longer noted as done.
 */
export function doneNow(
  document: unknown,
  { done }: RearWorkDocument,
  id: string,
  by: string,
  when: string,
): readonly Edit[] {
  const early = done.filter(
    ({ step, standing, because }) =>
      step !== id && standing !== 'stands' && because.some((cause) => cause.step === id),
  );
  return [
    ...early.map(({ step }) => notDone(document, step)),
    write(document, [...DONE, id], { ...(by !== '' && { by }), when }),
  ];
}

export function notDone(document: unknown, id: string): Edit {
  return write(document, [...DONE, id], undefined);
}
