const fractions = ['', '1/4', '1/2', '3/4'] as const;

/** The nearest quarter turn, as hands turn: 6.33 → 6.25. Never −0. */
export function quarter(turns: number): number {
  return Math.round(turns * 4) / 4 || 0;
}

/** How many turns, to the quarter, without direction: "6 1/4", "3/4", "0". */
export function formatTurns(turns: number): string {
  const quarters = Math.abs(Math.round(turns * 4));
  const whole = Math.floor(quarters / 4);
  const part = fractions[quarters % 4]!;
  if (part === '') return String(whole);
  return whole === 0 ? part : `${whole} ${part}`;
}

/** The same with its direction as a sign, for a narrow table: "+6 1/4" is tighter, "-3/4" looser. */
export function formatSignedTurns(turns: number): string {
  const text = formatTurns(turns);
  return text === '0' ? text : `${turns > 0 ? '+' : '-'}${text}`;
}
