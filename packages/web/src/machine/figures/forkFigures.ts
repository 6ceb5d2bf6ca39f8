import { airOfLegs, type Fork, type LegAir } from '@sagwright/records/schema/fork';
import type { FrontTravel } from '@sagwright/records/schema/frontTravel';
import { choicesOf } from '../../fields/choicesOf.ts';
import { at, type Edit, write } from '../../job/edits.ts';
import { struts } from '../../words/figures.ts';
import { fork as words } from '../../words/fork.ts';
import { changeFront, type FrontKind } from './changeFront.ts';
import { type Column, type Figure, type FigurePart, quantity, together } from './figure.ts';
import { partOrNone } from './partOrNone.ts';

type Choice = Extract<Figure, { kind: 'choice' }>;

const FORK = 'machine.front.fork';

/** What the front is; and where it is no telescopic fork, how its wheel moves its springs. */
export function frontTravelPart(travel: FrontTravel | undefined): FigurePart {
  const path = 'machine.front.travel';
  const kind: Figure = {
    kind: 'choice',
    path: `${path}.kind`,
    label: words.frontKind,
    value: travel?.kind ?? 'fork',
    choices: choicesOf(words.frontKinds),
    change: (document, value, done) => changeFront(document, value as FrontKind, done),
  };
  return {
    title: null,
    figures: travel === undefined ? [kind] : [kind, travelFigure(path, travel)],
  };
}

function travelFigure(path: string, travel: FrontTravel): Figure {
  const wheel = { name: 'wheel', label: struts.wheel, bound: 'wheelTravel', reading: 'tape' } as const;
  const rows = (column: Column): Figure => ({
    kind: 'rows',
    path: `${path}.rows`,
    label: words.travelTold,
    columns: [wheel, column],
    least: 3,
    held: 'list',
  });
  switch (travel.kind) {
    case 'leverage':
      return quantity(`${path}.ratio`, words.ratio.leverage, 'leverage', 'ratio');
    case 'motion':
      return quantity(`${path}.ratio`, words.ratio.motion, 'motion', 'ratio');
    case 'table':
      return rows({ name: 'shock', label: words.springUnit, bound: 'shockLength', reading: 'tape' });
    case 'force':
      return rows({ name: 'force', label: words.forceAtWheel, bound: 'springForce', reading: 'springPoint' });
  }
}

/** The legs by themselves: stroke, friction, build, and where they stand in their clamps. */
export function legsPart(fork: Fork | undefined): FigurePart {
  return {
    title: words.title,
    figures: [
      quantity(`${FORK}.stroke`, struts.stroke, 'stroke', 'stroke'),
      quantity(`${FORK}.friction`, struts.friction.front, 'friction', 'friction'),
      choiceOrNone(`${FORK}.tubes`, words.tubes, fork?.tubes, words.build),
      ...dampingFigures(fork?.damping),
      ...together(
        `${FORK}.clampHeight`,
        ['now'],
        [
          ['now', words.clampNow, 'clampHeight', 'collar'],
          ['whenMeasured', words.clampWhenMeasured, 'clampHeight', 'collar'],
        ],
      ),
    ],
  };
}

/** What stands in a front that is no fork: its stroke unless the forces at the wheel tell all of it, and its friction. */
export function unitPart({ kind }: FrontTravel): FigurePart {
  const friction = quantity(`${FORK}.friction`, words.unitFriction, 'friction', 'friction');
  const stroke = quantity(`${FORK}.stroke`, struts.stroke, 'stroke', 'stroke');
  return { title: words.unit, figures: kind === 'force' ? [friction] : [stroke, friction] };
}

/** What damps both legs, or each by itself. */
function dampingFigures(damping: Fork['damping']): readonly Figure[] {
  const path = `${FORK}.damping`;
  const isApart = typeof damping === 'object';
  const alike: Choice = {
    ...choiceOrNone(path, words.damping, isApart ? EACH : damping, {
      ...words.dampers,
      [EACH]: words.eachLeg,
    }),
    change: (document, way): readonly Edit[] => {
      const now = at(document, path.split('.')) as Fork['damping'];
      const typed = typeof now === 'object' ? now.left : now;
      const each = { left: typed ?? 'none', right: typed ?? 'none' };
      const next = way === NOT_KNOWN ? undefined : way === EACH ? each : way;
      return way === (typeof now === 'object' ? EACH : (now ?? NOT_KNOWN))
        ? []
        : [write(document, path.split('.'), next)];
    },
  };
  if (!isApart) return [alike];
  return [
    alike,
    ...(['left', 'right'] as const).map((leg) =>
      choiceOf(`${path}.${leg}`, words.dampingOf[leg], damping[leg], {
        ...words.dampers,
        none: words.noDamping,
      }),
    ),
  ];
}

/** The air above the oil, of both legs or of each; whether they differ is asked once it was read. */
export function airParts(air: Fork['air']): readonly FigurePart[] {
  const legs = airOfLegs(air);
  const parts = legs.map(({ leg, air: told, step }) =>
    airPart([FORK, 'air', ...step].join('.'), words.airOf[leg], told),
  );
  if (legs.length === 1 && (air === undefined || air === 'none')) return parts;
  return [{ title: null, figures: [legsAlike(legs.length > 1)] }, ...parts];
}

function legsAlike(isApart: boolean): Figure {
  const path = [...FORK.split('.'), 'air'];
  return {
    kind: 'choice',
    path: `${FORK}.air.legs`,
    label: words.legs,
    value: isApart ? EACH : 'both',
    choices: [
      { value: 'both', word: words.legsAlike },
      { value: EACH, word: words.eachLeg },
    ],
    change: (document, way): readonly Edit[] => {
      const [first, second] = airOfLegs(at(document, path) as Fork['air']);
      if ((way === EACH) === (second !== undefined)) return [];
      const alike = first!.air === 'none' ? second?.air : first!.air;
      return [write(document, path, way === EACH ? { left: alike, right: alike } : alike)];
    },
  };
}

/** The air of a leg; what was in it is asked once a gap was read. */
function airPart(path: string, title: string, air: LegAir): FigurePart {
  const read = air !== undefined && air !== 'none';
  const figures = [
    ...together(path, ['gap'], [['gap', words.gap, 'airGap', 'airGap']]),
    ...(read ? [choiceOf(`${path}.readWith`, words.readWith, air.readWith ?? 'nothing', words.inLeg)] : []),
    ...together(
      path,
      ['gap'],
      [
        ['springVolume', words.springVolume, 'displaced', 'displaced'],
        ['spacerVolume', words.spacerVolume, 'displaced', 'displaced'],
        ['bore', words.bore, 'tubeDiameter', 'tube'],
        ['seal', words.seal, 'tubeDiameter', 'tube'],
        ['temperature', words.temperature, 'temperature', 'temperature'],
        ['pressure', words.pressure, 'gasPressure', 'gasPressure'],
      ],
    ),
    ...(read
      ? together(
          `${path}.oil`,
          ['filled', 'gapIsFor'],
          [
            ['filled', words.oilFilled, 'oil', 'oil'],
            ['gapIsFor', words.oilForGap, 'oil', 'oil'],
          ],
        )
      : []),
  ];
  // A leg told by itself is not left out: its figures are then needed.
  return partOrNone(path, title, air, figures, path === `${FORK}.air` ? undefined : {});
}

/** What lies between cap and seat; the rest of it is asked once the room was read. */
export function stackPart({ stack, adjuster }: Pick<Fork, 'stack' | 'adjuster'>): FigurePart {
  const path = `${FORK}.stack`;
  const room = together(path, ['room'], [['room', words.room, 'springLength', 'tape']]);
  if (stack === undefined) return { title: words.stack, figures: room };
  return {
    title: words.stack,
    figures: [
      ...room,
      choiceOf(`${path}.readAt`, words.readAt, stack.readAt ?? 'fully out', words.readAts),
      ...(adjuster?.kind === 'spacer'
        ? []
        : together(path, ['room'], [['spacer', words.spacer, 'spacer', 'collar']])),
      {
        kind: 'rows',
        path: `${path}.washers`,
        label: words.washers,
        columns: [{ name: null, label: words.thickness, bound: 'washer', reading: 'shaft' }],
        least: 0,
        held: 'list',
      },
    ],
  };
}

/** A fact that goes one of a few ways. */
function choiceOf(
  path: string,
  label: string,
  value: string,
  ways: Readonly<Record<string, string>>,
): Choice {
  return {
    kind: 'choice',
    path,
    label,
    value,
    choices: Object.entries(ways).map(([way, word]) => ({ value: way, word })),
    change: (document, way): readonly Edit[] => {
      const steps = path.split('.');
      const next = way === NOT_KNOWN ? undefined : way;
      return at(document, steps) === next ? [] : [write(document, steps, next)];
    },
  };
}

/** The same, or not known. */
function choiceOrNone(
  path: string,
  label: string,
  value: string | undefined,
  ways: Readonly<Record<string, string>>,
): Choice {
  return choiceOf(path, label, value ?? NOT_KNOWN, { [NOT_KNOWN]: words.notKnown, ...ways });
}

const NOT_KNOWN = 'not known';
const EACH = 'each';
