/** Round numbers between two ends, at most `count` steps apart: 1, 2 or 5 times a power of ten. */
export function ticksWithin(least: number, most: number, count: number): readonly number[] {
  const rough = (most - least) / count;
  const ten = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * ten).find((each) => each >= rough * (1 - 1e-9))!;
  const ticks: number[] = [];
  for (let i = Math.ceil(least / step - 1e-9); i * step <= most + 1e-9 * step; i += 1) {
    // Without the digits that a step of 0.2 brings in.
    ticks.push(Number((i * step).toPrecision(10)));
  }
  return ticks;
}
