import * as z from 'zod/mini';

/** The key of a member of a list. Never a name that every JavaScript object already has. */
export const id = z.string().check(z.regex(/^(?!(?:constructor|prototype)$)[a-z0-9][a-z0-9-]{0,63}$/));

export type Id = z.infer<typeof id>;

/** What people call a thing; blanks around it are dropped. */
export const name = z.string().check(z.trim(), z.minLength(1), z.maxLength(120));

export const freeText = z.string().check(z.maxLength(4000));

/** Where a member stands in its list; any number, so that one can be put between two others. */
export const order = z.number().check(z.minimum(-1e9), z.maximum(1e9));

export const end = z.enum(['rear', 'front']);

export type End = z.infer<typeof end>;

const membersAtMost = 200;

/** A list whose members keep their identity: id to member, held in the order of the ids so that a job has one spelling. */
export function members<T extends z.ZodMiniType>(member: T) {
  return z.record(id, member).check(
    z.superRefine(refuseCrowd),
    z.overwrite((list) => inOrderOfIds(list)),
  );
}

function refuseCrowd(list: object, context: z.core.$RefinementCtx): void {
  const count = Object.keys(list).length;
  if (count <= membersAtMost) return;
  context.addIssue({ code: 'too_big', origin: 'list', maximum: membersAtMost, input: list });
}

function inOrderOfIds<T>(list: Record<string, T>): Record<string, T> {
  return Object.fromEntries(Object.entries(list).sort(([a], [b]) => (a < b ? -1 : 1)));
}
