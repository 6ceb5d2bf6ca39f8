import type { Figure } from '@sagwright/model/plan/answer';
import { differenceFromSI, fromSI } from '@sagwright/records/units';
import type {
  AsTyped,
  Judged,
  MountCheck,
  MountDocument,
  PhaseDocument,
  RearWorkDocument,
  StepDocument,
  ToolDocument,
  TorqueDocument,
} from '../fitting/document.ts';
import { fixed, marked } from '../format/digits.ts';
import { plainFraction } from '../format/plainNumber.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import { capital } from './capital.ts';
import { fields } from './english/fields.ts';
import { fitting as say } from './english/fitting.ts';

/** The work list in words, for a page and a terminal alike. */
export interface WorkListWords {
  readonly unit: string | null;
  /** What was done too early and must be undone, in this order; what has to be done once more; what came too late. */
  readonly undo: readonly StepNote[];
  readonly again: readonly StepNote[];
  readonly lost: readonly string[];
  readonly unknown: string | null;
  readonly phases: readonly PhaseWords[];
  readonly done: readonly DoneWords[];
  readonly mounts: readonly MountWords[];
  /** Of the whole unit: mounts beside each other, thread, bracket. */
  readonly whole: readonly LineWords[];
  readonly cautions: readonly string[];
  readonly source: string;
}

export interface StepNote {
  readonly id: string;
  readonly text: string;
}

export interface PhaseWords {
  /** How the machine stands, and what to mind there; null: it does not matter. */
  readonly stance: { readonly title: string; readonly trap: string } | null;
  readonly steps: readonly StepWords[];
}

export interface StepWords {
  readonly id: string;
  /** Its place in the whole list, which it keeps whatever was done. */
  readonly number: number;
  readonly title: string;
  readonly how: string;
  readonly trap: string;
  /** What it comes after, and why. */
  readonly after: readonly string[];
  readonly tools: readonly string[];
  readonly torque: TorqueWords | null;
  /** What keeps it from being done. */
  readonly stops: readonly string[];
}

export interface TorqueWords {
  readonly part: TorqueDocument['part'];
  readonly text: string;
  /** It may be worked by: it has its page and its reader. */
  readonly usable: boolean;
}

export interface DoneWords {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  /** Who did it and when, as noted; '' where nobody said. */
  readonly by: string;
}

export interface MountWords {
  readonly mount: MountDocument['mount'];
  readonly title: string;
  readonly lines: readonly LineWords[];
}

/** `fails`: it does not fit, or must not be ridden so. */
export interface LineWords {
  readonly text: string;
  readonly tone: 'fits' | 'look' | 'fails' | 'needed';
}

export function workListWords(work: RearWorkDocument, units: Units): WorkListWords {
  const numbers = new Map(work.steps.map(({ id }, i) => [id, i + 1] as const));
  const byId = new Map(work.steps.map((step) => [step.id, step] as const));
  const title = (id: string): string => stepTitle(byId.get(id)!);
  const notes = (how: 'undo' | 'again'): readonly StepNote[] =>
    work.done
      .filter(({ standing }) => standing === how)
      .map((done) => ({ id: done.step, text: say.undo(title(done.step), becauseWords(work, done, title)) }));
  const undo = notes('undo');
  return {
    unit: work.unit,
    undo: work.undo.map((id) => undo.find((note) => note.id === id)!),
    again: notes('again'),
    lost: work.lost.map(({ step, by }) => say.lost(title(step), title(by))),
    unknown: work.unknown.length === 0 ? null : say.unknown(work.unknown.join(', ')),
    phases: work.left.map((phase) => phaseWords(phase, byId, numbers)),
    done: work.done.flatMap(({ step, by, when, standing }) =>
      standing === 'stands'
        ? [
            {
              id: step,
              number: numbers.get(step)!,
              title: title(step),
              by: [by, when].filter((part) => part !== null).join(' '),
            },
          ]
        : [],
    ),
    mounts: work.mounts.map((mount) => mountWords(mount, units)),
    whole: wholeLines(work, units),
    cautions: work.cautions.map((code) => say.cautions[code]),
    source: sourceWords(work.steps),
  };
}

/** "Tighten the top bolt with a torque wrench, left". */
function stepTitle({ kind, side, mount, of }: StepDocument): string {
  const title = say.steps[kind].title(mount === null ? '' : say.ends[mount], of ?? '');
  return side === null ? title : say.sided(title, say.sides[side]);
}

function becauseWords(
  work: RearWorkDocument,
  { because }: RearWorkDocument['done'][number],
  title: (id: string) => string,
): string {
  const done = new Set(work.done.map(({ step }) => step));
  return say.mount.list(
    because.map(({ step, why }) => (done.has(step) ? say.rests : say.missing)(title(step), say.why[why])),
  );
}

function phaseWords(
  { stance, steps }: PhaseDocument,
  byId: ReadonlyMap<string, StepDocument>,
  numbers: ReadonlyMap<string, number>,
): PhaseWords {
  return {
    stance: stance === null ? null : { title: say.stances[stance], trap: say.stanceTraps[stance] },
    steps: steps.map((id): StepWords => {
      const step = byId.get(id)!;
      return {
        id,
        number: numbers.get(id)!,
        title: stepTitle(step),
        how: say.steps[step.kind].how,
        trap: say.steps[step.kind].trap,
        after: afterWords(step, numbers),
        tools: step.tools.map(toolWords),
        torque: step.torque === null ? null : torqueWords(step.torque),
        stops: step.stops.map((part) => say.stop(say.fitted[part])),
      };
    }),
  };
}

/** "After 12, 13: the next part lies on it." One line for each reason. */
function afterWords({ after }: StepDocument, numbers: ReadonlyMap<string, number>): readonly string[] {
  const reasons = new Map<string, number[]>();
  for (const { step, why } of after) {
    const text = say.why[why];
    reasons.set(text, [...(reasons.get(text) ?? []), numbers.get(step)!]);
  }
  return [...reasons].map(([why, steps]) => say.after(steps.sort((a, b) => a - b).join(', '), why));
}

function toolWords({ kind, on, size }: ToolDocument): string {
  return say.tools(kind, size === null ? null : typedWords(size), say.parts[on]);
}

/** "17 mm", "9/16 in", "50 lbf·ft": as it stands on the tool or in the manual. */
function typedWords({ value, unit }: AsTyped): string {
  return `${unit === 'in' ? plainFraction(value, 64) : value} ${unit}`;
}

function torqueWords({ part, value, page, readBy, checkedBy, state }: TorqueDocument): TorqueWords {
  if (state === 'no figure' || value === null) return { part, text: say.torque.none, usable: false };
  if (state === 'no page' || state === 'no reader')
    return { part, text: say.torque.notYet[state], usable: false };
  const who = say.torque.states[state](readBy!, checkedBy ?? '');
  return { part, text: say.torque.told(typedWords(value), page!, who), usable: true };
}

function mountWords(mount: MountDocument, units: Units): MountWords {
  const { needs, checks, needed, bush } = mount;
  const length = (value: number | null, tell: (text: string) => string): string =>
    value === null ? '' : tell(exact(value, units));
  const sleeve: readonly LineWords[] =
    needs === null
      ? []
      : [
          {
            tone: 'look',
            text: say.mount.needs(
              fine(needs.outer, units),
              fine(needs.inner, units),
              fine(needs.wall, units),
              length(needs.longerThan, say.mount.longerThan) + length(needs.atMost, say.mount.atMost),
            ),
          },
        ];
  const missing = needed.map((need) => say.mount.need[need]);
  return {
    mount: mount.mount,
    title: say.mount.title(say.ends[mount.mount]),
    lines: [
      ...sleeve,
      ...checks.map((check) => checkLine(check, units)),
      ...(bush === null ? [{ tone: 'look' as const, text: say.mount.unknownBush }] : []),
      ...(missing.length === 0
        ? []
        : [{ tone: 'needed' as const, text: say.mount.needed(say.mount.list(missing)) }]),
    ],
  };
}

const tones = { fits: 'fits', close: 'look', 'too much': 'fails', 'too little': 'fails' } as const;

function checkLine(check: MountCheck, units: Units): LineWords {
  return { tone: tones[check.verdict], text: capital(checkWords(check, units)) };
}

function checkWords({ of, found, least, most, verdict }: MountCheck, units: Units): string {
  const name = say.mount.checks[of];
  const text = fine(found, units);
  switch (verdict) {
    case 'fits':
      return say.mount.fits(name, text);
    case 'close':
      return say.mount.close(name, text);
    case 'too much':
      return say.mount.tooMuch(name, text, exact(most!, units));
    case 'too little':
      return tooLittleWords(of, found, least ?? 0, units);
  }
}

function tooLittleWords(of: MountCheck['of'], found: Figure, least: number, units: Units): string {
  if (of !== 'side float') return say.mount.tooLittle[of](fine(sizeOf(found), units));
  if (found.value < 0 || least === 0) return say.mount.tooLittle[of](fine(found, units));
  return say.mount.tooLittleFloat(fine(found, units), exact(least, units));
}

function wholeLines(work: RearWorkDocument, units: Units): readonly LineWords[] {
  const { offset, threadLeft, bracket, usualWidths } = work;
  const { spacers = null, standsOff = null } = bracket ?? {};
  return [
    offset === null ? { tone: 'needed', text: say.offset.needed } : offsetLine(offset, units),
    ...(threadLeft === null ? [] : [threadLine(threadLeft, units)]),
    ...(bracket === null
      ? []
      : [
          spacers === null || standsOff === null
            ? { tone: 'needed' as const, text: say.bracket.unknown(exact(bracket.offset, units)) }
            : {
                tone: 'fits' as const,
                text: say.bracket.spacers(
                  say.bracket.count(spacers),
                  exact(standsOff, units),
                  exact(bracket.offset, units),
                ),
              },
        ]),
    ...(usualWidths.length === 0 ? [] : [{ tone: 'look' as const, text: widthWords(work, units) }]),
  ];
}

/** Those of the eyes by our own names, those of the length adjuster by the names that the plan has for them. */
function widthWords({ usualWidths }: RearWorkDocument, units: Units): string {
  const told = usualWidths.map(({ path, plusMinus }) => {
    const end = path.split('.')[2]!;
    const own = say.figures[path] ?? say.figures[path.replace(`.rear.${end}.`, '.rear.*.')];
    return say.widthOf((own ?? fields[path]!)(end), exact(plusMinus, units));
  });
  return say.usualWidths(say.mount.list(told));
}

function offsetLine({ found, most, verdict }: Judged, units: Units): LineWords {
  const tell = {
    fits: say.offset.fits,
    close: say.offset.close,
    'too much': say.offset.over,
    'too little': say.offset.over,
  };
  return { tone: tones[verdict], text: tell[verdict](fine(found, units), exact(most!, units)) };
}

function threadLine({ found, verdict }: Judged, units: Units): LineWords {
  if (verdict === 'fits') return { tone: 'fits', text: say.threadLeft.fits(fine(found, units)) };
  if (verdict === 'close') return { tone: 'look', text: say.threadLeft.close(fine(found, units)) };
  return { tone: 'fails', text: say.threadLeft.under(fine(sizeOf(found), units)) };
}

/** A length that is taken as it stands. */
function exact(value: number, units: Units): string {
  return fine({ value, plusMinus: null }, units);
}

/** A length as a caliper tells it, to 0.01 mm or a thousandth of an inch: finer than lengths of a machine are told. */
function fine({ value, plusMinus }: Figure, units: Units): string {
  const unit = units.unit.length === 'in' ? 'in' : 'mm';
  const most = unit === 'in' ? 3 : 2;
  const number = fixed(fromSI(value, unit), most);
  if (plusMinus === null || plusMinus === 0) return marked(`${Number(number)} ${unit}`, units.decimal);
  const width = fixed(Math.max(differenceFromSI(plusMinus, unit), 10 ** -most), most);
  return marked(`${number} ± ${width} ${unit}`, units.decimal);
}

/** Whose advice the steps are: each source that there is, once. */
function sourceWords(steps: readonly StepDocument[]): string {
  const sources = new Set(steps.map(({ kind }) => say.steps[kind].source));
  return say.sourced(say.practice, say.mount.list([...sources]));
}
