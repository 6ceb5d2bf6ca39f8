/**
 * A plan as text that can be read as a diff: four digits (more than any ± supports, fewer than rounding noise needs; what
 * is below a nanometre is nothing), of what makes a ± the three greatest parts, small objects on one line.
 */
export function planText(plan: unknown): string {
  return `${lines(JSON.parse(JSON.stringify(plan, legible)), '')}\n`;
}

function legible(key: string, value: unknown): unknown {
  if (typeof value === 'number') return Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(4));
  if (key === 'contributions' && Array.isArray(value)) return value.slice(0, 3);
  return value;
}

function lines(value: unknown, indent: string): string {
  const line = JSON.stringify(value);
  if (typeof value !== 'object' || value === null || line.length <= 150) return line;
  const deeper = `${indent} `;
  const list = Array.isArray(value);
  const parts = list
    ? value.map((each) => lines(each, deeper))
    : Object.entries(value).map(([key, each]) => `${JSON.stringify(key)}: ${lines(each, deeper)}`);
  return `${list ? '[' : '{'}\n${parts.map((part) => `${deeper}${part}`).join(',\n')}\n${indent}${list ? ']' : '}'}`;
}
