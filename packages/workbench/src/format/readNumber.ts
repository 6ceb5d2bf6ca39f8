import { plainDecimal } from './plainNumber.ts';

/** What a typed text says as a number. `either` of an unclear text: plain ways to write what it may have meant. */
export type NumberRead =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'unclear'; readonly why: string; readonly either: readonly string[] }
  | { readonly kind: 'not a number'; readonly why: string };

/**
 * Reads a number as typed anywhere: no locale, so that a tablet set to German and one set to English read the same.
 *
 * - Comma and point are each a decimal mark: "12,5", "12.5", ".5", "0,125", "1234,567".
 * - Both in one number: the last is the decimal mark, the first groups by threes: "1.234,5" is 1234.5.
 * - The same mark more than once groups by threes: "1.234.567".
 * - Spaces (thin ones too) and apostrophes group by threes: "1 234,5", "1'234". After them a mark is the decimal mark.
 * - Fractions: "3/8", "2 3/4", "2-3/4", "2 ¾", "-2 1/16".
 * - **Unclear**, and never guessed: one mark with three digits after it and one to three before it that could begin a
 *   thousand, "1,234" or "12.500". Write 1234, or 1.2340 with one more digit. And groups that are not of three.
 */
export function readNumber(text: string): NumberRead {
  const plain = plainText(text);
  if (plain === '') return { kind: 'empty' };
  const [, sign = '', size = ''] = /^([+-]?) ?(.*)$/.exec(plain) ?? [];
  const read = size.includes('/') ? readFraction(size) : readDecimal(size);
  if (typeof read === 'number' && Number.isFinite(read)) {
    return { kind: 'number', value: sign === '-' ? 0 - read : read };
  }
  return refusal(plain, sign === '-' ? '-' : '', read);
}

/** Why a text is no number: the ways to write what it may have meant; none where its groups are wrong. */
type Fault = 'no digits' | 'not a number' | 'over nothing' | { readonly either: readonly string[] };

function refusal(text: string, minus: string, fault: Fault | number): NumberRead {
  if (typeof fault === 'object')
    return unclear(
      text,
      fault.either.map((way) => `${minus}${way}`),
    );
  const found = text.length > 24 ? `${text.slice(0, 23)}…` : text;
  const why = typeof fault === 'number' ? 'too large to be held.' : reasons[fault];
  return { kind: 'not a number', why: `${found}: ${why}` };
}

const reasons = {
  'no digits': 'no digits yet.',
  'not a number': 'not a number. Digits with one comma or point, or a fraction like 2 3/4.',
  'over nothing': 'nothing can be divided by 0.',
} as const;

function unclear(text: string, either: readonly string[]): NumberRead {
  const [thousand, decimal] = either;
  if (thousand === undefined) {
    return { kind: 'unclear', why: `${text}: its groups are not of three. Write it without any.`, either };
  }
  const what =
    decimal === undefined
      ? 'beside a whole number a fraction is less than 1.'
      : `is it ${decimal.slice(0, -1)} or ${thousand}?`;
  return { kind: 'unclear', why: `${text}: ${what} Write ${either.join(' or ')}.`, either };
}

/** One minus, one space, one apostrophe, one fraction bar, whatever the keyboard made of them. */
function plainText(text: string): string {
  return text
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (fraction) => ` ${fraction.normalize('NFKC')}`)
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2212\u2010-\u2013]/g, '-')
    .replace(/[\u2018\u2019\u02bc]/g, "'")
    .replace(/\s+/g, ' ')
    .trim();
}

function readFraction(text: string): number | Fault {
  const [, whole, top = '', bottom = ''] =
    /^(?:(\d+|[1-9]\d{0,2}(?: \d{3})+)[ -])?(\d+) ?\/ ?(\d+)$/.exec(text) ?? [];
  if (bottom === '') return 'not a number';
  if (Number(bottom) === 0) return 'over nothing';
  const part = Number(top) / Number(bottom);
  if (whole === undefined) return part;
  const value = Number(whole.replaceAll(' ', '')) + part;
  return part < 1 ? value : { either: [plainDecimal(value)] };
}

function readDecimal(text: string): number | Fault {
  if (!/^[\d., ']*$/.test(text)) return 'not a number';
  if (!/\d/.test(text)) return 'no digits';
  const marks = text.replace(/[\d ']/g, '');
  const decimal = decimalMark(text, marks);
  const cut = decimal === undefined ? text.length : text.lastIndexOf(decimal);
  const [whole, decimals] = [text.slice(0, cut), text.slice(cut + 1)];
  if (!/^\d*$/.test(decimals) || !isGrouped(whole)) return { either: [] };
  if (marks.length === 1 && decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole)) {
    return { either: [`${whole}${decimals}`, `${whole}.${decimals}0`] };
  }
  return Number(`${whole.replace(/\D/g, '')}.${decimals}0`);
}

/** The mark before the decimals: the last one, unless it stands more than once and so groups. */
function decimalMark(text: string, marks: string): string | undefined {
  const last = marks.at(-1);
  if (last === undefined) return undefined;
  const groups = marks.length > 1 && [...marks].every((mark) => mark === last) && !/[ ']/.test(text);
  return groups ? undefined : last;
}

/** Digits alone, or one to three of them and then threes, all parted by the same mark. */
function isGrouped(whole: string): boolean {
  return /^\d*$/.test(whole) || /^[1-9]\d{0,2}([., '])\d{3}(?:\1\d{3})*$/.test(whole);
}
