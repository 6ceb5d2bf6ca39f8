import type { KeptBy } from '@sagwright/model/attitude/keep';
import type { Figure } from '@sagwright/model/plan/answer';
import { HARDEST } from '@sagwright/model/steady/lift';
import {
  format,
  formatFigure,
  formatFigureNumber,
  formatPlainNumber,
  formatTyped,
  type ShownDimension,
  unitOf,
} from '../format/format.ts';
import { sizeOf } from '../format/size.ts';
import type { Units } from '../format/units.ts';
import type { JobPlan } from '../path.ts';
import { words } from '../words/catalogue.ts';
import { stance as say } from '../words/english/stance.ts';
import { loadName } from '../words/names.ts';
import type {
  BeamDocument,
  KeepDocument,
  KeepTwoDocument,
  KeptChange,
  StanceFigureDocument,
  SteadyDocument,
  SteadyEnd,
} from './document.ts';
import type { StanceFigure } from './rows.ts';

/** What each figure is counted in. */
export const stanceDimension: { readonly [F in StanceFigure]: ShownDimension } = {
  'seat-height': 'length',
  'peg-height': 'length',
  rake: 'angle',
  trail: 'length',
  'normal-trail': 'length',
  wheelbase: 'length',
  pitch: 'angle',
  lean: 'angle',
  'lean-in-bend': 'angle',
  'stand-lean': 'angle',
  'lamp-height': 'length',
  'beam-drop': 'length',
};

/** What a figure is called, with the point it is of. */
export function stanceName({ job }: JobPlan, figure: StanceFigure, point: string | null): string {
  return point === null
    ? say.without[figure]
    : say.name[figure](words.quoted(job.machine.points?.[point]?.name ?? point));
}

/** "+3.1 ± 0.8": a change with its sign. */
export function changeNumber(change: Figure, dimension: ShownDimension, units: Units): string {
  const text = formatFigureNumber(change, dimension, units);
  return change.value > 0 && /^[^±]*[1-9]/.test(text) ? `+${text}` : text;
}

/** What a rider may feel of a change; null where it is within its ±, or nothing changed. */
export function feltWords({ figure, felt }: StanceFigureDocument): string | null {
  return felt === null ? null : say.felt[figure][felt];
}

/** What a rider may feel of all changes of a load, each feeling once with what makes it; empty where nothing is beyond its ±. */
export function feltOfLoad(planned: JobPlan, figures: readonly StanceFigureDocument[]): readonly string[] {
  const byWords = new Map<string, string[]>();
  for (const each of figures) {
    const felt = feltWords(each);
    if (felt === null) continue;
    const name = stanceName(planned, each.figure, each.point);
    byWords.set(felt, [...(byWords.get(felt) ?? []), name]);
  }
  return [...byWords].map(([felt, names]) => say.feltFrom(felt, words.list(names)));
}

/** The beam with its rule, in sentences. */
export function beamWords({ job }: JobPlan, beam: BeamDocument, units: Units): readonly string[] {
  const drop = formatFigure(beam.drop, 'length', units);
  const distance = formatTyped(job.machine.beam!.distance, units);
  if (beam.least === null || beam.most === null) return [`${say.beam.noRule(drop, distance)}.`];
  const edge = (at: number): string => formatPlainNumber(at, 'length', units);
  const range = say.beam.range(edge(beam.least), `${edge(beam.most)} ${unitOf('length', units)}`);
  return [
    `${say.beam.against(range, distance, drop)}: ${say.beam.verdict[beam.verdict]}.`,
    say.beam.rule(beam.rule, beam.where, beam.source),
  ];
}

/** Smaller than this a change of length cannot be set [m]. Common practice, no source. */
const SETTABLE = 0.00025;

/** An answer of "keep the attitude": what is wanted, what does it, whether it can be set. */
export function keepWords(
  planned: JobPlan,
  { part, by, like, change, verdict }: KeepDocument,
  units: Units,
): { readonly wanted: string; readonly does: string; readonly verdict: string } {
  const wanted = say.keep.like(say.keep.part[part], loadName(planned.job, like));
  if (change === null) {
    const none = verdict === 'no change does' ? say.keep.verdict[verdict][by] : say.keep.verdict['not known'];
    return { wanted, does: none, verdict: '' };
  }
  if (Math.abs(change.value) < SETTABLE) return { wanted, does: say.keep.small, verdict: '' };
  const length = formatFigure(sizeOf(change), 'length', units);
  return {
    wanted,
    does: say.keep.by[by][change.value > 0 ? 'longer' : 'shorter'](length),
    verdict:
      verdict === 'not checked'
        ? say.keep.verdict[verdict][by]
        : verdict === 'no change does'
          ? say.keep.verdict[verdict][by]
          : say.keep.verdict[verdict],
  };
}

/** The same by two changes: each with whether it can be set. */
export function keepTwoWords(
  planned: JobPlan,
  { parts: [one, other], like, shockLength, clampHeight }: KeepTwoDocument,
  units: Units,
): ReturnType<typeof keepWords> {
  const name = say.keep.both(say.keep.part[one], say.keep.part[other]);
  const wanted = say.keep.like(name, loadName(planned.job, like));
  if (shockLength.verdict === 'no change does') return { wanted, does: say.keep.noTwo, verdict: '' };
  const told = (by: KeptBy, kept: KeptChange): ReturnType<typeof keepWords> =>
    keepWords(planned, { part: one, by, like, ...kept }, units);
  const [length, clamp] = [told('shock length', shockLength), told('clamp height', clampHeight)];
  if (shockLength.change === null) return { wanted, does: length.does, verdict: '' };
  const each = ({ does, verdict }: ReturnType<typeof keepWords>): string =>
    verdict === '' ? does : `${does} (${verdict})`;
  return { wanted, does: say.keep.together(each(length), each(clamp)), verdict: '' };
}

/** Braking or driving in sentences, the action first. */
export function steadyWords(planned: JobPlan, steady: SteadyDocument, units: Units): readonly string[] {
  if (steady.kind === 'needs') return [say.steady.needs[steady.needs]];
  if (steady.kind === 'not found') return [say.steady.notFound];
  const { braking } = planned.inputs.stance;
  const gain = format(Math.abs(steady.gain), 'acceleration', units);
  const action =
    steady.action === 'braking'
      ? say.steady.kind.braking(gain, format(braking?.frontShare ?? 0, 'share', units))
      : say.steady.kind.driving(gain);
  const light = steady.action === 'braking' ? 'rear' : 'front';
  const lift =
    steady.liftsFrom === null
      ? say.steady.staysDown(light, format(HARDEST, 'acceleration', units))
      : say.steady.liftsFrom(light, format(steady.liftsFrom, 'acceleration', units));
  if (steady.kind === 'lifts') return [action, say.steady.lifts[steady.wheel], lift];
  return [
    action,
    endWords('front', steady.front, units),
    endWords('rear', steady.rear, units),
    ...gripWords(steady, units),
    lift,
  ];
}

function endWords(end: 'rear' | 'front', { change, left, load }: SteadyEnd, units: Units): string {
  const by = formatFigure(sizeOf(change), 'length', units);
  return say.steady.end(
    end,
    say.steady.goes[change.value >= 0 ? 'in' : 'out'](by),
    formatFigure(left, 'length', units),
    formatFigure(load, 'mass', units),
  );
}

/** Beyond this share of its load a tyre slides on most dry roads. Common practice, no source. */
const DRY = 0.9;

function gripWords(
  { rear, front }: Extract<SteadyDocument, { kind: 'stands' }>,
  units: Units,
): readonly string[] {
  return (['front', 'rear'] as const).flatMap((end) => {
    const { grip } = end === 'front' ? front : rear;
    if (grip < 0.005) return [];
    const held = say.steady.grip(end, format(grip, 'share', units));
    return [grip > DRY ? `${held}: ${say.steady.slides}` : held];
  });
}

/** What is left out of the leans, and how the tyres are taken. */
export function leanNotes({ inputs }: JobPlan, figures: readonly StanceFigureDocument[]): readonly string[] {
  const { crowns } = inputs.stance;
  const has = (figure: StanceFigure): boolean =>
    figures.some((each) => each.figure === figure && each.asFound !== null);
  const leans = has('lean') || has('stand-lean');
  return [
    ...(has('lean') ? [say.leanIs] : []),
    ...(has('stand-lean') ? [say.standIs] : []),
    ...(leans && (crowns.rear === null || crowns.front === null) ? [say.thinTyres] : []),
  ];
}

/** What of the forces under the brake is not known. */
export function brakeNotes({ job, inputs }: JobPlan): readonly string[] {
  if (inputs.stance.braking === null) return [];
  return [
    ...(inputs.question.machine.front.kinematics.kind === 'fork' ? [] : [say.steady.noFork]),
    ...(job.machine.rear.pivot === undefined ? [say.steady.armUnknown] : []),
  ];
}
