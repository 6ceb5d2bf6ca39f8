/**
 * How many decimals a ± supports; below 0 it is tens, hundreds.
 * The rule: a ± is told with two significant digits where it begins with 1 or 2, else with one, and its value to the same
 * place. 0.27 → 2, 0.34 → 1, 1.84 → 1, 4.05 → 0, 12 → 0, 30 → −1. Rounding a ± by this rule changes it by less than 5 % where
 * it begins with 1 or 2 and by less than 17 % otherwise, which no ± of ours is good enough to tell.
 */
export function decimalsFor(plusMinus: number): number {
  if (!(plusMinus > 0) || !Number.isFinite(plusMinus)) {
    throw new RangeError(`decimalsFor: ± ${plusMinus}; a finite number above 0 is needed`);
  }
  const [digits, exponent] = plusMinus.toExponential(1).split('e') as [string, string];
  return Math.min(MOST, (Number(digits) < 3 ? 1 : 0) - Number(exponent));
}

/** Nobody reads further: a ± below that shows as none. */
const MOST = 12;

/** A number to a decimal place (below 0: to tens, hundreds), halves away from 0, never "-0". Digits beyond the 12th are noise. */
export function fixed(value: number, decimals: number): string {
  const whole = Math.round(Number((Math.abs(value) * 10 ** decimals).toPrecision(12)));
  const text = decimals > 0 ? (whole / 10 ** decimals).toFixed(decimals) : String(whole * 10 ** -decimals);
  return value < 0 && whole > 0 ? `-${text}` : text;
}

/** A number in text with the decimal mark of its language. */
export function marked(text: string, mark: '.' | ','): string {
  return mark === ',' ? text.replaceAll('.', ',') : text;
}
