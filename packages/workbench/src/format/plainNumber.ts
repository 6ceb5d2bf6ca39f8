/**
 * A number as a person types it, with a point, so that `readNumber` reads it back as itself: "1.234", which might be a
 * thousand, is written "1.2340".
 */
export function plainDecimal(value: number): string {
  const text = String(value);
  const [, minus = '', first = '', rest = '', exponent] = /^(-?)(\d)\.?(\d*)e([+-]\d+)$/.exec(text) ?? [];
  if (exponent === undefined) return /^-?[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text;
  const places = Number(exponent);
  if (places > 0) return `${minus}${first}${rest.padEnd(places, '0')}`;
  return `${minus}0.${'0'.repeat(-places - 1)}${first}${rest}`;
}

/** A number in fractions as they stand on an inch rule, "2 1/16", reduced; as decimals where it is none of `parts`. */
export function plainFraction(value: number, parts: number): string {
  const size = Math.abs(value) * parts;
  if (!Number.isInteger(size) || size % parts === 0) return plainDecimal(value);
  const whole = Math.floor(size / parts);
  const common = commonDivisor(size % parts, parts);
  const fraction = `${(size % parts) / common}/${parts / common}`;
  return `${value < 0 ? '-' : ''}${whole > 0 ? `${whole} ` : ''}${fraction}`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}
