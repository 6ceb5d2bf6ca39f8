import { fixed } from '@sagwright/workbench/format/digits';
import type { PlanDocument, PlannedDocument, SpringDocument } from '@sagwright/workbench/result/document';

const ink = '#11191C';
const second = '#35434A';
const green = '#054A45';
const wash = '#CFE2DA';
const plum = '#76123F';
const hairline = '#C6CFCB';

const width = 900;
const axis = { left: 210, right: 660, top: 138, least: -8, most: 42 };
const lane = 15;
const rowGap = 16;

/**
 * The rear of a plan as a picture: springs softest first, and for each load the collar positions that keep the wheel in the
 * wanted band, with the aim and its ±, against what the collar reaches. Drawn for the README from the plan itself.
 */
export function reachPicture(plan: PlanDocument): string {
  const { springs, adjuster } = plan.rear;
  if (adjuster === null) throw new RangeError('reachPicture: the rear has no adjuster; a collar is needed');
  const rowHeight = plan.loadCases.length * lane + rowGap;
  const bottom = axis.top + springs.length * rowHeight;
  const parts = [
    heading(plan),
    `<rect x="${x(0)}" y="${axis.top - 8}" width="${x(adjuster.range * 1000) - x(0)}" height="${bottom - axis.top + 8}" fill="${wash}"/>`,
    ...springs.map((spring, i) => row(plan, spring, axis.top + i * rowHeight)),
    ...scale(adjuster.range * 1000, bottom),
  ];
  const height = bottom + 58;
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" font-family="B612, system-ui, sans-serif" font-size="14" fill="${ink}">
<title>Collar positions that hold the wanted sag, ${plan.rear.springs.length} springs, ${plan.loadCases.length} loads</title>
<rect width="${width}" height="${height}" fill="#FBFCFA"/>
${parts.join('\n')}
</svg>
`;
}

function heading(plan: PlanDocument): string {
  const loads = plan.loadCases.map(({ name }, i) => {
    const [column, line] = [i % 3, Math.floor(i / 3)];
    return text(24 + column * 290, 62 + line * 20, `${i + 1}  ${name}`);
  });
  return [
    text(
      24,
      34,
      `Rear springs at hand for ${plan.job.machine} (invented)`,
      `font-size="18" font-weight="bold"`,
    ),
    ...loads,
    text(
      24,
      112,
      'Bar: collar positions that hold the wanted sag. Tick: the aim. Whisker: its ±.',
      `fill="${second}"`,
    ),
  ].join('\n');
}

function row(plan: PlanDocument, spring: SpringDocument, top: number): string {
  const suggested = plan.rear.suggestion.kind === 'spring' && plan.rear.suggestion.spring === spring.id;
  const lanes = spring.cells.flatMap((cell, i) =>
    cell.kind === 'planned' && cell.positions !== null ? [bar(cell, i, top + i * lane + lane / 2)] : [],
  );
  const weight = suggested ? ' font-weight="bold"' : '';
  return [
    `<line x1="24" x2="${width - 24}" y1="${top - rowGap / 2}" y2="${top - rowGap / 2}" stroke="${hairline}"/>`,
    suggested
      ? `<rect x="12" y="${top - 6}" width="4" height="${spring.cells.length * lane + 8}" fill="${green}"/>`
      : '',
    text(24, top + 14, spring.name, weight),
    text(24, top + 34, `${fixed(spring.rate / 1000, 1)} N/mm`, `fill="${second}"${weight}`),
    ...lanes,
    ...verdict(spring, suggested).map((line, i) =>
      text(axis.right + 20, top + 14 + i * 20, line, `fill="${spring.fits ? green : plum}"${weight}`),
    ),
  ].join('\n');
}

function bar({ positions, reach }: PlannedDocument, index: number, y: number): string {
  const { loosest, aim, tightest } = positions!;
  const [from, at, to] = [x(loosest * 1000), x(aim.value * 1000), x(tightest * 1000)];
  const halfWidth = (aim.plusMinus ?? 0) * 1000;
  const [least, most] = [x(aim.value * 1000 - halfWidth), x(aim.value * 1000 + halfWidth)];
  const reached = reach.kind === 'reached';
  const colour = reached ? green : plum;
  const dash = reach.kind === 'out of reach' ? ' stroke-dasharray="3 2"' : '';
  const number = Math.max(to, most) + 6;
  return [
    `<line x1="${least}" x2="${most}" y1="${y}" y2="${y}" stroke="${colour}"/>`,
    `<rect x="${from}" y="${y - 4}" width="${round(to - from)}" height="8" fill="${reached ? green : '#FBFCFA'}" stroke="${colour}"${dash}/>`,
    `<line x1="${at}" x2="${at}" y1="${y - 5}" y2="${y + 5}" stroke="${reached ? '#FBFCFA' : plum}" stroke-width="2"/>`,
    text(number, y + 4, String(index + 1), `font-size="12" fill="${colour}"`),
  ].join('\n');
}

/** What a spring fails on, in a line each; whole where it holds every load. */
function verdict(spring: SpringDocument, suggested: boolean): readonly string[] {
  if (suggested) return ['suggested: the softest', 'that holds every load'];
  if (spring.fits) return ['holds every load, stiffer'];
  return spring.cells.flatMap((cell, i) => {
    if (cell.kind !== 'planned' || !('short' in cell.reach)) return [];
    const by = `${fixed(cell.reach.short * 1000, 1)} mm`;
    return [
      cell.reach.kind === 'at the edge' ? `${i + 1} only at the edge` : `${i + 1} out of reach by ${by}`,
    ];
  });
}

function scale(range: number, bottom: number): readonly string[] {
  const marks = Array.from({ length: Math.floor(range / 5 + 1e-6) + 1 }, (_, i) => 5 * i);
  const ticks = marks.map((mm) => text(x(mm), bottom + 16, String(mm), 'text-anchor="middle"'));
  const ends = [0, range].map(
    (mm) =>
      `<line x1="${x(mm)}" x2="${x(mm)}" y1="${axis.top - 8}" y2="${bottom}" stroke="${ink}" stroke-width="3"/>`,
  );
  const middle = (x(0) + x(range)) / 2;
  const caption = 'collar, mm from its loosest end; tinted: what it reaches';
  return [...ends, ...ticks, text(middle, bottom + 40, caption, `text-anchor="middle" fill="${second}"`)];
}

function x(mm: number): number {
  return round(axis.left + ((mm - axis.least) / (axis.most - axis.least)) * (axis.right - axis.left));
}

function round(pixels: number): number {
  return Number(pixels.toFixed(1));
}

function text(left: number, baseline: number, words: string, attributes = ''): string {
  const safe = words.replace(/&/g, '&amp;').replace(/</g, '&lt;');
  return `<text x="${round(left)}" y="${baseline}" ${attributes}>${safe}</text>`;
}
