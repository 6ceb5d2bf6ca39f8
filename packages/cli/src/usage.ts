import { type ParseArgsConfig, parseArgs } from 'node:util';
import { type UnitsChoice, unitsChoices } from '@sagwright/workbench/format/units';

/** A command line that is not understood: what is wrong with it, as data. */
export interface Misused {
  readonly misused: string;
}

/** Options and words of a command line, or what is wrong with it; `words` says what stands beside the options. */
export function argumentsOf<O extends NonNullable<ParseArgsConfig['options']>>(
  args: readonly string[],
  options: O,
): ReturnType<typeof parseArgs<{ args: string[]; options: O; allowPositionals: true }>> | Misused {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    return { misused: error.message.split('. ')[0]! };
  }
}

/** The one file that a command is about. */
export function oneFile(positionals: readonly string[]): string | Misused {
  const [file, ...more] = positionals;
  if (file === undefined) return { misused: 'A job file is needed; "-" reads standard input' };
  return more.length === 0 ? file : { misused: `One job file at a time; found ${positionals.join(', ')}` };
}

/** The job file and the units of a command that shows one job. */
export function fileAndUnits({
  positionals,
  values,
}: {
  readonly positionals: readonly string[];
  readonly values: { readonly units?: string | undefined };
}): { readonly name: string; readonly choice: UnitsChoice } | Misused {
  const name = oneFile(positionals);
  if (isMisused(name)) return name;
  const choice = unitsChoice(values.units);
  return isMisused(choice) ? choice : { name, choice };
}

export function unitsChoice(text: string | undefined): UnitsChoice | Misused {
  if (text === undefined) return 'typed';
  const found = unitsChoices.find((choice) => choice === text);
  return found ?? { misused: `--units is ${unitsChoices.join(', ')}; found ${text}` };
}

export function isMisused(value: unknown): value is Misused {
  return typeof value === 'object' && value !== null && 'misused' in value;
}
