import type { Dimension } from '../units.ts';

/** What was found where something else was needed, short enough for a sentence. */
export function found(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return quoted(value);
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object') return 'a group of fields';
  return String(value);
}

/** A text in quotation marks, cut short where it is long. */
export function quoted(text: string): string {
  return text.length <= 40 ? `"${text}"` : `"${text.slice(0, 39)}…"`;
}

/** "mm, cm, m or in" */
export function anyOf(words: readonly unknown[]): string {
  const texts = words.map(String);
  return texts.length < 2 ? texts.join('') : `${texts.slice(0, -1).join(', ')} or ${texts.at(-1)}`;
}

export const dimensionInWords: { readonly [D in Dimension]: string } = {
  length: 'a length',
  mass: 'a mass',
  rate: 'a rate',
  hardening: 'a hardening',
  force: 'a force',
  pressure: 'a pressure',
  angle: 'an angle',
  volume: 'a volume',
  torque: 'a torque',
  temperature: 'a temperature',
  leverage: 'a leverage ratio (wheel per shock)',
  motion: 'a motion ratio (shock per wheel)',
  share: 'a share',
  acceleration: 'an acceleration',
  speed: 'a speed',
};
