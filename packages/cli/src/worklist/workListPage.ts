import type { RearWorkDocument, WorkListDocument } from '@sagwright/workbench/fitting/document';
import type { Units } from '@sagwright/workbench/format/units';
import { fitting as say } from '@sagwright/workbench/words/english/fitting';
import {
  type LineWords,
  type PhaseWords,
  type StepWords,
  type WorkListWords,
  workListWords,
} from '@sagwright/workbench/words/fitting';
import type { Output } from '../terminal/output.ts';
import type { Look } from '../terminal/paint.ts';
import { padTo, pageOf, wrap } from '../terminal/text.ts';

type Screen = Pick<Output, 'width' | 'paint'>;

/** The work list as it is read beside the machine: what must be undone, what does not fit, then what hands do next. */
export function workListPage(
  job: WorkListDocument['job'],
  work: RearWorkDocument,
  units: Units,
  screen: Screen,
): string {
  const words = workListWords(work, units);
  const { paint, width } = screen;
  return pageOf([
    [
      ...wrap(job.name, width).map((line) => paint(line, 'strong')),
      ...wrap(words.unit === null ? job.machine : `${job.machine}. ${words.unit}.`, width),
    ],
    section(say.heads.undo, texts(words.undo), screen, 'attention'),
    section(say.heads.again, texts(words.again), screen, 'attention'),
    section(
      say.heads.lost,
      [...words.lost, ...(words.unknown === null ? [] : [words.unknown])],
      screen,
      'attention',
    ),
    section(say.heads.cautions, words.cautions, screen, 'strong'),
    partLines(words, screen),
    headLines(work, screen),
    ...words.phases.flatMap((phase) => phaseLines(phase, screen)),
    wrap(words.source, width),
  ]);
}

function texts(notes: WorkListWords['undo']): readonly string[] {
  return notes.map(({ text }) => text);
}

function section(
  head: string,
  lines: readonly string[],
  { width, paint }: Screen,
  look: Look,
): readonly string[] {
  if (lines.length === 0) return [];
  return [paint(head, look), ...lines.flatMap((line) => wrap(line, width, '  ', '  '))];
}

function partLines({ mounts, whole }: WorkListWords, screen: Screen): readonly string[] {
  const { paint, width } = screen;
  const part = (title: string, lines: readonly LineWords[]): readonly string[] => [
    ...wrap(title, width, '  '),
    ...lines.flatMap(({ text, tone }) => {
      const wrapped = wrap(text, width, '    ', '  ');
      return tone === 'fails' ? wrapped.map((line) => paint(line, 'attention')) : wrapped;
    }),
  ];
  return [
    paint(say.heads.parts, 'strong'),
    ...mounts.flatMap(({ title, lines }) => part(title, lines)),
    ...part(say.whole, whole),
  ];
}

function headLines(work: RearWorkDocument, { width, paint }: Screen): readonly string[] {
  const stands = work.done.filter(({ standing }) => standing === 'stands').length;
  const progress = say.progress(String(stands), String(work.steps.length), say.changes(work.changes));
  return [
    paint(say.heads.list, 'strong'),
    ...wrap(work.left.length === 0 ? say.allDone : progress, width, '  '),
  ];
}

/** How the machine stands, then each step of it, apart from the next by an empty line. */
function phaseLines({ stance, steps }: PhaseWords, screen: Screen): readonly (readonly string[])[] {
  const { width, paint } = screen;
  return [
    [
      ...wrap(stance === null ? say.anyStance : stance.title, width).map((line) => paint(line, 'strong')),
      ...(stance === null ? [] : wrap(say.trap(stance.trap), width, '  ')),
    ],
    ...steps.map((step) => stepLines(step, screen)),
  ];
}

const INDENT = '     ';

function stepLines(step: StepWords, { width, paint }: Screen): readonly string[] {
  const number = padTo(String(step.number), 3, 'right');
  const [first = '', ...rest] = wrap(`${step.title}. [${step.id}]`, width, INDENT);
  const more = [
    step.how,
    say.trap(step.trap),
    ...step.after,
    ...step.tools,
    ...(step.torque === null ? [] : [say.torqueLine(say.parts[step.torque.part], step.torque.text)]),
  ];
  return [
    `${paint(number, 'wanted')}  ${first.trimStart()}`,
    ...rest,
    ...step.stops.flatMap((line) =>
      wrap(line, width, INDENT, '  ').map((wrapped) => paint(wrapped, 'attention')),
    ),
    ...more.flatMap((line) => wrap(line, width, INDENT, '  ')),
  ];
}
