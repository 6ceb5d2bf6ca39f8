import * as z from 'zod/mini';
import { type FieldPath, type Problem, problem } from '../problem.ts';
import { descriptions } from '../schema/descriptions.ts';
import type { OutOfBounds } from '../schema/quantity.ts';
import { ofSize } from '../schema/stance.ts';
import { dimensionOf } from '../units.ts';
import { anyOf, found, quoted } from './found.ts';
import { nearest } from './nearest.ts';

type RawIssue = z.core.$ZodRawIssue;
type Issue = z.core.$ZodIssue;

/** What is wrong with a value's shape or bounds, in our own words; empty where it has the shape. */
export function shapeProblems(schema: z.ZodMiniType, value: unknown): Problem[] {
  // zod keeps one text for each issue, and tells only this function what was found and what was wanted: its text is
  // the number of a note that says the problem once the whole path is known.
  const notes: ((path: FieldPath) => Problem[])[] = [];
  const result = schema.safeParse(value, {
    error: (issue) => String(notes.push((path) => say(issue, path)) - 1),
  });
  const tell = (issues: readonly Issue[], above: FieldPath): Problem[] =>
    issues.flatMap((issue) => {
      const path = [...above, ...(issue.path as (string | number)[])];
      const branch = issue.code === 'invalid_union' ? likeliest(issue.errors) : undefined;
      return branch ? tell(branch, path) : notes[Number(issue.message)]!(path);
    });
  return result.success ? [] : tell(result.error.issues, []);
}

/** Of several shapes a value could have had, the one it comes nearest to; undefined where two are as near. */
function likeliest(branches: readonly (readonly Issue[])[]): readonly Issue[] | undefined {
  const ranked = branches.map((issues) => ({ issues, off: fieldsOff(issues) })).sort((a, b) => a.off - b.off);
  const [first, second] = ranked;
  return first && second && first.off < second.off ? first.issues : undefined;
}

/** Fields that are missing or too many; infinite where the value is of another sort altogether. */
function fieldsOff(issues: readonly Issue[]): number {
  let off = 0;
  for (const issue of issues) {
    if (issue.code === 'unrecognized_keys' && issue.path.length === 0) off += issue.keys.length;
    else if (issue.path.length === 0) return Number.POSITIVE_INFINITY;
    else if (issue.code === 'invalid_type' && issue.path.length === 1) off += 1;
  }
  return off;
}

function say(issue: RawIssue, path: FieldPath): Problem[] {
  switch (issue.code) {
    case 'unrecognized_keys':
      return issue.keys.map((key) =>
        problem([...path, key], 'unknownField', nearest(key, fieldsOf(issue.inst))),
      );
    case 'invalid_key':
      return [problem(path, 'badId')];
    case 'invalid_format':
      return [problem(path, issue.pattern === String(ofSize) ? 'badSize' : 'badId')];
    case 'custom':
      return [outOfBounds(path, issue.params as OutOfBounds)];
    case 'too_small':
      return [problem(path, 'tooSmall', amount(issue.input), Number(issue.minimum))];
    case 'too_big':
      return [problem(path, 'tooLarge', amount(issue.input), Number(issue.maximum))];
    case 'invalid_union':
      return [noneFits(issue, path)];
    case 'invalid_value':
      return [wrongWord(issue.input, issue.values.map(String), path)];
    case 'invalid_type':
      return [wrongKind(issue, path)];
    default:
      throw new RangeError(`a problem of kind "${issue.code}" at ${path.join('.')} has no words yet`);
  }
}

function outOfBounds(path: FieldPath, { rule, bound, typed }: OutOfBounds): Problem {
  const { value, unit } = rule === 'plusMinusOutOfBounds' ? typed.plusMinus! : typed;
  return problem(path, rule, value, unit, bound);
}

/** How much there is of it: a number itself, the letters of a text, the members of a list. */
function amount(input: unknown): string {
  if (typeof input === 'number') return String(input);
  if (typeof input === 'string') return `${input.length} characters`;
  return `${Object.keys(input as object).length} entries`;
}

function wrongWord(input: unknown, allowed: readonly string[], path: FieldPath): Problem {
  if (input === undefined) return problem(path, 'missing', anyOf(allowed));
  const dimension = dimensionOf(allowed[0]!);
  if (dimension && typeof input === 'string') {
    // Guessed by capitals only: another letter may be a factor of a thousand.
    return problem(
      path,
      'wrongUnit',
      input,
      dimension,
      allowed,
      allowed.find((unit) => unit.toLowerCase() === input.toLowerCase()),
    );
  }
  const meant = typeof input === 'string' ? nearest(input, allowed) : undefined;
  return problem(path, 'wrongWord', found(input), allowed, meant);
}

function wrongKind(issue: z.core.$ZodRawIssue<z.core.$ZodIssueInvalidType>, path: FieldPath): Problem {
  const needed = neededInWords(issue);
  if (issue.input === undefined) return problem(path, 'missing', needed);
  if (typeof issue.input === 'number' && !Number.isFinite(issue.input)) return problem(path, 'notFinite');
  return problem(path, 'wrongKind', found(issue.input), needed);
}

function neededInWords({ inst, expected }: z.core.$ZodRawIssue<z.core.$ZodIssueInvalidType>): string {
  const range = inst instanceof z.ZodMiniObject ? descriptions.get(inst)?.description : undefined;
  if (range) return `a figure with its unit (${range})`;
  return kindsInWords[expected] ?? String(expected);
}

const kindsInWords: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  object: 'a group of fields { }',
  record: 'a list by ids { }',
  array: 'a list [ ]',
};

/** A value that has none of several shapes, or bits of two: the choices are named by what tells them apart. */
function noneFits(issue: z.core.$ZodRawIssue<z.core.$ZodIssueInvalidUnion>, path: FieldPath): Problem {
  if (issue.discriminator !== undefined) {
    const input = issue.input as Record<string, unknown>;
    const words = Array.isArray(issue.options) ? issue.options.map(String) : [];
    return wrongWord(input[issue.discriminator], words, path);
  }
  const options = issue.inst instanceof z.ZodMiniUnion ? issue.inst.def.options : [];
  const tellsApart = (field: string) => !options.every((option) => fieldsOf(option).includes(field));
  const choices = options.map((option) => choiceInWords(option, tellsApart));
  if (issue.input === undefined) return problem(path, 'missing', `one of ${choices.join('; ')}`);
  if (typeof issue.input !== 'object' || issue.input === null || Array.isArray(issue.input)) {
    return problem(path, 'noneFits', found(issue.input), choices);
  }
  const fields = Object.keys(issue.input).filter(tellsApart);
  return problem(path, 'noneFits', fields.length === 0 ? null : fields.map(quoted).join(' with '), choices);
}

function choiceInWords(option: unknown, tellsApart: (field: string) => boolean): string {
  if (option instanceof z.ZodMiniLiteral) return anyOf([...option._zod.values].map(found));
  const required = requiredFieldsOf(option);
  const telling = required.filter(tellsApart);
  return (telling.length > 0 ? telling : required).join(' with ');
}

function fieldsOf(schema: unknown): string[] {
  return schema instanceof z.ZodMiniObject ? Object.keys(schema.def.shape) : [];
}

function requiredFieldsOf(schema: unknown): string[] {
  if (!(schema instanceof z.ZodMiniObject)) return [];
  return Object.keys(schema.def.shape).filter(
    (field) => !(schema.def.shape[field] instanceof z.ZodMiniExactOptional),
  );
}
