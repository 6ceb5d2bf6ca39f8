import { formatFigure, formatFigureNumber } from '@sagwright/workbench/format/format';
import type { Units } from '@sagwright/workbench/format/units';
import type {
  CollarFound,
  Doubted,
  FigureRead,
  FoundDocument,
  InputFound,
  MeasuredDocument,
  SagRead,
} from '@sagwright/workbench/measure/document';
import { readingName, suspectWords } from '@sagwright/workbench/measure/words';
import type { JobPlan } from '@sagwright/workbench/path';
import { measure as say } from '@sagwright/workbench/words/english/measure';
import { fieldName, loadName, springName } from '@sagwright/workbench/words/names';
import type { Output } from '../terminal/output.ts';
import { table } from '../terminal/table.ts';
import { pageOf, wrap } from '../terminal/text.ts';

interface Page extends Pick<Output, 'width' | 'paint'> {
  readonly planned: JobPlan;
  readonly units: Units;
}

/** Inputs that moved by less than this many of their deviations are told of only in full. */
const WORTH_TELLING = 0.5;

/** What was read, as it is looked at beside the machine: sags first, then what does not fit, then what comes of it. */
export function measuredPage(
  planned: JobPlan,
  document: MeasuredDocument,
  units: Units,
  { width, paint }: Pick<Output, 'width' | 'paint'>,
  full: boolean,
): string {
  const page: Page = { planned, units, width, paint };
  const { found, trouble, sags } = document;
  return pageOf([
    [
      ...wrap(document.job.name, width).map((line) => paint(line, 'strong')),
      ...wrap(document.job.machine, width),
    ],
    sags.length === 0 ? [] : sagLines(page, sags),
    full && found !== null ? figureLines(page, document.figures) : [],
    trouble === null ? [] : wrap(say.troubles[trouble], width).map((line) => paint(line, 'attention')),
    found === null
      ? []
      : [
          paint(say.suspect, 'strong'),
          ...suspectWords(planned.job, found, sags, units).flatMap((sentence) =>
            wrap(sentence, width, '  ', '  ').map((line) =>
              found.suspect === null && !found.beyondChance ? line : paint(line, 'attention'),
            ),
          ),
        ],
    found === null ? [] : inputLines(page, found.inputs, full),
    found === null || found.collars.length === 0 ? [] : collarLines(page, found),
  ]);
}

function sagLines(page: Page, sags: readonly SagRead[]): readonly string[] {
  const { width, paint, units } = page;
  const length = (figure: Doubted | null): string =>
    figure === null ? '' : formatFigure(figure, 'length', units);
  return [
    paint(say.sags, 'strong'),
    ...wrap(say.sagsWords, width, '  ', '  '),
    ...table<SagRead>(
      [
        { head: say.heads.where, align: 'left', cell: (sag) => placeOf(page, sag) },
        { head: say.heads.sag, align: 'right', cell: ({ sag }) => length(sag) },
        { head: say.heads.expected, align: 'right', cell: ({ expected }) => length(expected) },
        { head: say.heads.band, align: 'right', cell: ({ band }) => length(band) },
        {
          head: say.heads.verdict,
          align: 'left',
          cell: ({ verdict }) => (verdict === null ? '' : say.verdicts[verdict]),
          look: ({ verdict }) => (verdict === 'apart' ? 'attention' : null),
        },
      ],
      sags,
      width,
      paint,
    ),
    ...(sags.some(({ verdict }) => verdict === 'apart') ? wrap(say.apart, width, '  ', '  ') : []),
    ...sags.flatMap((sag) =>
      sag.faults.flatMap((fault) =>
        wrap(`${placeOf(page, sag)}: ${say.faults[fault]}`, width, '  ', '    ').map((line) =>
          paint(line, 'attention'),
        ),
      ),
    ),
  ];
}

/** Load, end, side, and what else tells one reading from another. */
function placeOf({ planned: { job } }: Page, { id, loadCase, end, side, along }: SagRead): string {
  const reading = job.readings?.[id];
  return [
    loadCase === null ? say.alone : loadName(job, loadCase),
    say.ends[end],
    ...(side === null ? [] : [say.sides[side]]),
    ...(along === 'stroke' ? [say.along.stroke] : []),
    ...(reading?.kind === 'sag' && reading.adjusters !== undefined ? [say.turned] : []),
  ].join(', ');
}

function figureLines(
  { planned: { job }, units, width, paint }: Page,
  figures: readonly FigureRead[],
): readonly string[] {
  return [
    paint(say.figures, 'strong'),
    ...wrap(say.figuresWords, width, '  ', '  '),
    ...table<FigureRead>(
      [
        { head: say.heads.figure, align: 'left', cell: ({ id }) => readingName(job, id) },
        {
          head: say.heads.read,
          align: 'right',
          cell: ({ read, dimension }) => formatFigure(read, dimension, units),
        },
        {
          head: say.heads.found,
          align: 'right',
          cell: ({ found, dimension, read }) =>
            found === null ? '' : formatFigure({ value: found, plusMinus: read.plusMinus }, dimension, units),
        },
        { head: say.heads.miss, align: 'right', cell: ({ miss }) => (miss === null ? '' : miss.toFixed(1)) },
      ],
      figures,
      width,
      paint,
    ),
  ];
}

function inputLines(page: Page, inputs: readonly InputFound[], full: boolean): readonly string[] {
  const { planned, units, width, paint } = page;
  const told = full ? inputs : inputs.filter(({ moved }) => Math.abs(moved) >= WORTH_TELLING);
  return [
    paint(say.inputs, 'strong'),
    ...(told.length === 0
      ? wrap(say.inputsNone, width, '  ', '  ')
      : table<InputFound>(
          [
            { head: say.heads.input, align: 'left', cell: ({ path }) => fieldName(planned.job, path) },
            {
              head: say.heads.before,
              align: 'right',
              cell: ({ before, dimension }) => formatFigure(before, dimension, units),
            },
            {
              head: say.heads.after,
              align: 'right',
              cell: ({ after, dimension }) => formatFigure(after, dimension, units),
            },
          ],
          told,
          width,
          paint,
        )),
  ];
}

function collarLines(page: Page, { collars, springs }: FoundDocument): readonly string[] {
  const { planned, units, width, paint } = page;
  const named = (id: string | null): string | null => (id === null ? null : springName(planned.job, id));
  const spring = [...new Set(collars.map((each) => springName(planned.job, each.spring)))].join(', ');
  return [
    paint(say.collars, 'strong'),
    ...wrap(say.collarsWords(spring), width, '  ', '  '),
    ...table<CollarFound>(
      [
        { head: say.heads.load, align: 'left', cell: ({ loadCase }) => loadName(planned.job, loadCase) },
        { head: say.heads.end, align: 'left', cell: ({ end }) => say.ends[end] },
        {
          head: say.heads.before,
          align: 'right',
          cell: ({ before }) => formatFigureNumber(before, 'length', units),
        },
        { head: say.heads.after, align: 'right', cell: ({ after }) => formatFigure(after, 'length', units) },
        {
          head: say.heads.reach,
          align: 'left',
          cell: ({ reach }) => say.reaches[reach],
          look: ({ reach }) => (reach === 'reached' ? null : 'attention'),
        },
      ],
      collars,
      width,
      paint,
    ),
    ...springs.flatMap(({ end, before, after }) =>
      wrap(say.spring(say.ends[end], named(before), named(after)), width, '  ', '    '),
    ),
  ];
}
