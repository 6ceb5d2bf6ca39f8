import {
  boltPlay,
  faceRoom,
  type MountSI,
  mostOffset,
  mostPlay,
  sideFloat,
  sleeveNeeded,
  sleevePlay,
} from '@sagwright/model/fitting/mount';
import { longerLeft } from '@sagwright/model/limits/threadLeft';
import type { Figure } from '@sagwright/model/plan/answer';
import type { Mount, RearFitting } from '@sagwright/records/schema/fitting';
import { type Quantity, siOf } from '@sagwright/records/schema/quantity';
import type { Desk } from '../inputs/desk.ts';
import { lengthAdjusterFigures } from '../inputs/lengthAdjuster.ts';
import { ownFigure } from '../inputs/ownFigure.ts';
import type { BracketDocument, Judged, MountCheck, MountDocument, MountEnd, MountNeed } from './document.ts';

/** An end in SI, without its ±. */
export function bareMount(mount: Mount): MountSI {
  return mountSI(mount, (_, typed) => siOf(typed));
}

/** One end of the new shock against the machine's bolt: what it needs, and what was measured against what it must keep. */
export function mountDocument(desk: Desk, fitting: RearFitting, end: MountEnd): MountDocument {
  const mount = fitting[end] ?? {};
  const at = (each: Desk): MountSI =>
    mountSI(mount, (name, typed) => each.take.known(`fitting.rear.${end}.${name}`, typed, 'caliper'));
  const own = (work: (mount: MountSI) => number | null): Figure | null =>
    ownFigure(desk, (each) => work(at(each)));
  const bare = at(desk);
  return {
    mount: end,
    bush: mount.bush ?? null,
    needs:
      sleeveNeeded(bare) === null
        ? null
        : {
            inner: own(({ bolt }) => bolt)!,
            outer: own(({ bore }) => bore)!,
            wall: own(({ bore, bolt }) => (bore! - bolt!) / 2)!,
            longerThan: bare.eyeWidth,
            atMost: bare.clampWidth,
          },
    checks: checksOf(desk, mount, end, bare, own),
    needed: neededOf(mount, bare),
  };
}

function mountSI(mount: Mount, take: (name: string, typed: Quantity) => number): MountSI {
  const known = (name: string, typed: Quantity | undefined): number | null =>
    typed === undefined ? null : take(name, typed);
  const { sleeve } = mount;
  return {
    bore: known('bore', mount.bore),
    bolt: known('bolt', mount.bolt),
    eyeWidth: known('eyeWidth', mount.eyeWidth),
    clampWidth: known('clampWidth', mount.clampWidth),
    sleeve:
      sleeve === undefined
        ? null
        : {
            inner: known('sleeve.inner', sleeve.inner),
            outer: known('sleeve.outer', sleeve.outer),
            length: known('sleeve.length', sleeve.length),
          },
  };
}

function checksOf(
  desk: Desk,
  mount: Mount,
  end: MountEnd,
  bare: MountSI,
  own: (work: (mount: MountSI) => number | null) => Figure | null,
): readonly MountCheck[] {
  const play = (diameter: number | null): number | null => (diameter === null ? null : mostPlay(diameter));
  const lacksSleeve = bare.sleeve === null && sleeveNeeded(bare) !== null;
  const keep = mount.keep === undefined ? 0 : siOf(mount.keep);
  const rows: readonly (readonly [MountCheck['of'], Figure | null, number, number | null])[] = [
    // Without the sleeve that it needs, the play says nothing yet but that it is needed.
    ['bolt play', lacksSleeve ? null : own(boltPlay), 0, play(bare.bolt)],
    ['sleeve play', own(sleevePlay), 0, play(bare.bore)],
    ['side float', lacksSleeve ? null : own(sideFloat), keep, null],
    ['face room', own(faceRoom), 0, null],
    ['thread', threadBeyond(desk, mount, end), 0, null],
  ];
  return rows.flatMap(([of, found, least, most]) =>
    found === null ? [] : [{ of, ...judged(found, least, most, of === 'side float' && keep === 0) }],
  );
}

/** Thread engaged beyond what must be; null where bolt or thread is not known. */
function threadBeyond(desk: Desk, { bolt, thread }: Mount, end: MountEnd): Figure | null {
  const own = thread?.engaged;
  if (bolt === undefined || own === undefined) return null;
  const diameters = thread?.atLeast ?? (thread?.into === 'steel' ? DIAMETERS.steel : DIAMETERS.softer);
  return ownFigure(desk, ({ take }) => {
    const engaged = take.known(`fitting.rear.${end}.thread.engaged`, own, 'threadEngaged');
    const needed = diameters * take.known(`fitting.rear.${end}.bolt`, bolt, 'caliper');
    const only = { change: 0, least: null, most: null, lead: null, toMark: null };
    return longerLeft({ ...only, thread: { engaged, needed } })!.length;
  });
}

/** Diameters of thread that must be engaged where nobody said, in aluminium as where that is not known: common practice, no source. */
const DIAMETERS = { steel: 1, softer: 2 } as const;

function neededOf(mount: Mount, bare: MountSI): readonly MountNeed[] {
  const needs: readonly (readonly [MountNeed, boolean])[] = [
    ['bore', bare.bore === null],
    ['bolt', bare.bolt === null],
    ['sleeve', sleeveNeeded(bare) !== null && !isWhole(bare.sleeve)],
    ['eyeWidth', bare.eyeWidth === null],
    ['clampWidth', bare.clampWidth === null],
    ['thread', mount.thread?.engaged === undefined],
  ];
  return needs.flatMap(([need, isNeeded]) => (isNeeded ? [need] : []));
}

function isWhole(sleeve: MountSI['sleeve']): boolean {
  return sleeve !== null && ![sleeve.inner, sleeve.outer, sleeve.length].includes(null);
}

/** `beyond`: the least itself is too little. */
function judged(found: Figure, least: number | null, most: number | null, beyond = false): Judged {
  // Nobody knows how little is left where nobody knows the ±.
  const width = found.plusMinus ?? Number.POSITIVE_INFINITY;
  const under = least === null ? Number.POSITIVE_INFINITY : found.value - least;
  const over = most === null ? Number.POSITIVE_INFINITY : most - found.value;
  const nearer = Math.min(under, over);
  const verdict =
    under < -ROUNDING || (beyond && under <= ROUNDING)
      ? 'too little'
      : over < -ROUNDING
        ? 'too much'
        : nearer < width
          ? 'close'
          : 'fits';
  return { found, least, most, verdict };
}

/** What the sum of two typed lengths may be off by, far below what any caliper tells [m]. */
const ROUNDING = 1e-9;

/** How far the mounts lie beside each other; null where nobody measured it. */
export function offsetOf(desk: Desk, { mountOffset }: RearFitting): Judged | null {
  if (mountOffset === undefined) return null;
  const found = ownFigure(desk, ({ take }) => take.known('fitting.rear.mountOffset', mountOffset, 'tape'))!;
  return judged(found, null, mostOffset);
}

/** What the length adjuster has left once it stands as chosen; null where no length is chosen or its thread was not read. */
export function threadLeftOf(desk: Desk): Judged | null {
  const left = lengthAdjusterFigures(desk)?.chosen?.left ?? null;
  return left === null ? null : judged(left, 0, null);
}

/** Spacers under the bracket: so many that it stands off at least as far as it must. */
export function bracketOf({ reservoir }: RearFitting): BracketDocument | null {
  if (reservoir?.kind !== 'by hose' || reservoir.offset === undefined) return null;
  const offset = siOf(reservoir.offset);
  if (reservoir.spacer === undefined) return { offset, spacers: null, standsOff: null };
  const thickness = siOf(reservoir.spacer);
  const spacers = Math.ceil(offset / thickness - ROUNDING / thickness);
  return { offset, spacers, standsOff: spacers * thickness };
}
