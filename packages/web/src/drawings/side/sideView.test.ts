import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, boxesMeet, isInside, type Point } from '../box.ts';
import { nineThings, sideViews, stanceOn, tourer, traveller } from '../invented.ts';
import { TEXT_MIN, textBox } from '../lettering.ts';
import type { Shape } from './shapes.ts';
import {
  dashedSentences,
  EMPTY_SENTENCE,
  type SideViewMarks,
  sideView,
  sideViewSentence,
  sideViewTable,
} from './sideView.ts';
import type { Carried, MachineFigures, SideViewInput } from './sideViewInput.ts';
import type { TagMark } from './tagMarks.ts';

const shapesOf = ({ layers }: SideViewMarks): readonly Shape[] => layers.flatMap(({ shapes }) => shapes);

const TABLET = { width: 698, height: 540 };
const DESK = { width: 848, height: 486 };
const SMALL = { width: 560, height: 430 };
const PHONE = { width: 390, height: 351 };

const input = sideViews['nine things on a tourer']!;

const figures: fc.Arbitrary<MachineFigures> = fc
  .record({
    assumed: fc.subarray(['wheelbase', 'rake', 'rear tyre', 'front tyre'] as const),
    wheelbaseMm: fc.integer({ min: 1350, max: 1850 }),
    rake: fc.double({ min: 0.38, max: 0.62, noNaN: true }),
    forkOffsetMm: fc.option(fc.integer({ min: 20, max: 65 })),
    pivot: fc.option(
      fc.record({ xMm: fc.integer({ min: 450, max: 600 }), heightMm: fc.integer({ min: 320, max: 400 }) }),
    ),
    seat: fc.option(
      fc.record({ xMm: fc.integer({ min: 420, max: 640 }), heightMm: fc.integer({ min: 660, max: 870 }) }),
    ),
    rear: fc.record({
      tyreRadiusMm: fc.integer({ min: 295, max: 345 }),
      referenceTravelMm: fc.constant(0),
      shocks: fc.constantFrom(1 as const, 2 as const),
      shockLengthMm: fc.option(fc.integer({ min: 250, max: 420 })),
    }),
    front: fc.record({
      tyreRadiusMm: fc.integer({ min: 295, max: 345 }),
      referenceTravelMm: fc.constant(0),
    }),
  })
  .map(({ rear, front, ...machine }) => ({
    ...machine,
    rear: { ...rear, axleHeightMm: rear.tyreRadiusMm },
    front: { ...front, axleHeightMm: front.tyreRadiusMm, isFork: true },
  }));

const kinds = fc.constantFrom(
  ['person', 'rider seat'],
  ['person', 'passenger seat'],
  ['item', 'rear box'],
  ['item', 'side cases'],
  ['item', 'tank bag'],
  ['item', 'rack'],
  ['item', 'other'],
  ['place', 'rack'],
  ['fuel', 'tank'],
) as fc.Arbitrary<[Carried['kind'], Carried['place']]>;

const LABELS = [
  'Perrin',
  'top box',
  'tools under the seat',
  'what is in the left case',
  'stove, pans and rain suits',
  'Reiseapothekenwerkzeugtasche',
] as const;

const carried: fc.Arbitrary<readonly Carried[]> = fc
  .array(
    fc.record({
      kind: kinds,
      xMm: fc.integer({ min: -700, max: 1750 }),
      heightMm: fc.integer({ min: 350, max: 1450 }),
      label: fc.constantFrom(...LABELS),
      mass: fc.constantFrom('4 kg', '91 kg', '11.5 of 10', '1208 of 1235 lb'),
      overLimit: fc.boolean(),
      selected: fc.boolean(),
    }),
    { maxLength: 10 },
  )
  .map((things) =>
    things.map(({ kind: [kind, place], ...thing }, index) => ({
      ...thing,
      id: String(index),
      kind,
      place,
      standsOn: index === 0 ? null : String(index - 1),
      offset: `${Math.abs(thing.xMm)} ${thing.xMm < 0 ? 'behind' : 'ahead'}`,
    })),
  );

const anyInput: fc.Arbitrary<SideViewInput> = fc
  .record({
    machine: figures,
    travels: fc.tuple(fc.integer({ min: 0, max: 110 }), fc.integer({ min: 0, max: 130 })),
    carried,
  })
  .map(({ machine, travels: [rear, front], carried: things }) => ({
    ...input,
    machine,
    carried: things,
    stance: stanceOn(machine, rear, front, 14, 10),
  }));

/** Sizes that have tags: a tablet, a desk, and the smallest. */
const anySize = fc.constantFrom(TABLET, DESK, SMALL);

const LEVEL = { heaveMm: 0, pitch: 0, rearTravelMm: 0, frontTravelMm: 0, shockStrokeMm: 0 };

function crossing(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < -1e-6 && side(c, d, a) * side(c, d, b) < -1e-6;
}

function middleOf(marks: SideViewMarks): number {
  return (marks.rearWheel.axle.x + marks.frontWheel.axle.x) / 2;
}

type Line = readonly [Point, Point];

function linesOf({ leader: [port, bend, dot] }: TagMark): readonly Line[] {
  return [
    [port, bend],
    [bend, dot],
  ];
}

function edgesOf({ x, y, width, height }: Box): readonly Line[] {
  const [a, b, c, d] = [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ] as const;
  return [
    [a, b],
    [b, c],
    [c, d],
    [d, a],
  ];
}

function meet(some: readonly Line[], others: readonly Line[]): boolean {
  return some.some(([a, b]) => others.some(([c, d]) => crossing(a, b, c, d)));
}

describe('a machine to scale', () => {
  it('has the middle of its wheels in the middle of the drawing, whatever few things have tags', () => {
    for (const name of ['machine alone', 'one thing', 'fuel only', 'three things, little known, one shock']) {
      for (const size of [TABLET, DESK]) {
        expect(middleOf(sideView(sideViews[name]!, size)), name).toBeCloseTo(size.width / 2, 6);
      }
    }
  });

  it('fills a phone from edge to edge, so that only what sticks out at an end moves it aside', () => {
    const alone = sideView(sideViews['machine alone']!, PHONE);
    // The guard over the rear wheel reaches 65 mm behind the tyre, the one in front 40 mm ahead of it.
    expect(Math.abs(middleOf(alone) - PHONE.width / 2)).toBeLessThan(25 * alone.pxPerMm);
    const boxed = sideView(input, PHONE);
    expect(middleOf(boxed)).toBeGreaterThan(PHONE.width / 2);
  });

  it('stays in the drawing whole: wheels, dots and mass centre', () => {
    fc.assert(
      fc.property(anyInput, fc.constantFrom(TABLET, DESK, SMALL, PHONE), (any, size) => {
        const marks = sideView(any, size);
        for (const { axle, radius } of [marks.rearWheel, marks.frontWheel]) {
          expect(axle.x - radius).toBeGreaterThanOrEqual(0);
          expect(axle.x + radius).toBeLessThanOrEqual(size.width);
        }
        for (const { at } of marks.dots) {
          expect(
            isInside(
              { ...at, width: 0, height: 0 },
              { x: 0, y: 0, width: size.width, height: marks.groundY },
            ),
          ).toBe(true);
        }
      }),
      { seed: 36, numRuns: 100 },
    );
  });

  it('draws another tyre at its own radius, about an axle that stands in the body where it was', () => {
    const on = (radius: number) => {
      const front = { ...tourer.front, tyreRadiusMm: radius };
      return sideView({ ...input, machine: { ...tourer, front }, stance: LEVEL }, TABLET);
    };
    const [was, now] = [on(tourer.front.tyreRadiusMm), on(tourer.front.tyreRadiusMm + 12)];
    expect(now.frontWheel.radius / now.pxPerMm).toBeCloseTo(was.frontWheel.radius / was.pxPerMm + 12, 6);
    expect((now.groundY - now.frontWheel.axle.y) / now.pxPerMm).toBeCloseTo(
      (was.groundY - was.frontWheel.axle.y) / was.pxPerMm,
      6,
    );
  });

  it('draws no telescopic fork for a front that is none: its axle goes straight along the body, what carries it is dashed', () => {
    const other = { ...tourer, front: { ...tourer.front, isFork: false } };
    const axleAt = (machine: MachineFigures, frontTravelMm: number) => {
      const { frontWheel, rearWheel, pxPerMm } = sideView(
        { ...input, machine, stance: { ...LEVEL, frontTravelMm } },
        TABLET,
      );
      return (frontWheel.axle.x - rearWheel.axle.x) / pxPerMm;
    };
    expect(axleAt(other, 60)).toBeCloseTo(axleAt(other, 0), 6);
    expect(axleAt(tourer, 60)).toBeCloseTo(axleAt(tourer, 0) - 60 * Math.tan(tourer.rake), 6);
    const shapes = (machine: MachineFigures) => shapesOf(sideView({ ...input, machine }, TABLET));
    expect(shapes(other).length).toBeLessThan(shapes(tourer).length);
    expect(shapes(other).filter(({ guess }) => guess)).toHaveLength(2);
    expect(dashedSentences(other)).toEqual(['Not known and drawn dashed: what carries the front wheel.']);
  });

  it('has its wheels as far apart as its figures say, measured over the px of a millimetre', () => {
    // With straight rear travel and a fork without rake, level and at its reference travel, the axles stand a wheelbase apart.
    for (const machine of [tourer, traveller]) {
      const marks = sideView({ ...input, machine, stance: LEVEL }, TABLET);
      expect((marks.frontWheel.axle.x - marks.rearWheel.axle.x) / marks.pxPerMm).toBeCloseTo(
        machine.wheelbaseMm,
        6,
      );
      expect(marks.rearWheel.radius / marks.pxPerMm).toBeCloseTo(machine.rear.tyreRadiusMm, 6);
    }
  });

  it('stands on the ground by the loaded radii of its tyres', () => {
    fc.assert(
      fc.property(anyInput, (any) => {
        const marks = sideView(any, TABLET);
        const pressed = (wheel: { radius: number; loadedRadius: number }) =>
          (wheel.radius - wheel.loadedRadius) / marks.pxPerMm;
        expect(pressed(marks.rearWheel)).toBeCloseTo(14, 5);
        expect(pressed(marks.frontWheel)).toBeCloseTo(10, 5);
      }),
      { seed: 31, numRuns: 60 },
    );
  });

  it('lifts a wheel off the ground line where the state says so', () => {
    const raised = stanceOn(tourer, 0, 0, -40, 10);
    const { rearWheel } = sideView({ ...input, stance: raised }, TABLET);
    expect(rearWheel.loadedRadius).toBeGreaterThan(rearWheel.radius);
  });

  it('has its body over each axle by what the travel leaves: H − R − z, seen along the body', () => {
    // Straight travel, no pivot: the rear axle is at (0, R + z) in the body, the front one at (L − z tan rake, R + z).
    // Two points over them at the height H stand (H − R − z) cos θ higher than the axles: rotation, nothing else.
    const plain: MachineFigures = { ...tourer, pivot: null };
    const travels = fc.integer({ min: 0, max: 120 });
    fc.assert(
      fc.property(travels, travels, (rear, front) => {
        const stance = stanceOn(plain, rear, front, 14, 10);
        const point = (id: string, xMm: number): Carried => ({ ...nineThings[2]!, id, xMm, heightMm: 900 });
        const overFront = plain.wheelbaseMm - front * Math.tan(plain.rake!);
        const carried = [point('rear', 0), point('front', overFront)];
        const marks = sideView({ ...input, machine: plain, stance, carried }, TABLET);
        const above = (id: string, axleY: number) =>
          (axleY - marks.dots.find((dot) => dot.id === id)!.at.y) / marks.pxPerMm;
        expect(above('rear', marks.rearWheel.axle.y)).toBeCloseTo(
          (900 - 322 - rear) * Math.cos(stance.pitch),
          5,
        );
        expect(above('front', marks.frontWheel.axle.y)).toBeCloseTo(
          (900 - 312 - front) * Math.cos(stance.pitch),
          5,
        );
      }),
      { seed: 37, numRuns: 60 },
    );
  });

  it('has both wheels’ radii and the mass centre where the figures say', () => {
    const marks = sideView({ ...input, stance: LEVEL }, DESK);
    const { rearWheel, frontWheel, massCentre, pxPerMm, groundY } = marks;
    expect(rearWheel.radius / pxPerMm).toBeCloseTo(322, 6);
    expect(frontWheel.radius / pxPerMm).toBeCloseTo(312, 6);
    expect((massCentre!.x - rearWheel.axle.x) / pxPerMm).toBeCloseTo(600, 6);
    expect((groundY - massCentre!.y) / pxPerMm).toBeCloseTo(745, 6);
  });

  it('sinks at the rear as the rear wheel moves up into it', () => {
    const seatOf = (travel: number) => {
      const stance = stanceOn(tourer, travel, 40, 15, 10);
      const marks = sideView({ ...input, stance, carried: [nineThings[0]!] }, TABLET);
      return (marks.groundY - marks.dots[0]!.at.y) / marks.pxPerMm;
    };
    expect(seatOf(70)).toBeLessThan(seatOf(20) - 25);
  });

  it('names what is not known, and dashes it', () => {
    const marks = sideView({ ...input, machine: traveller }, TABLET);
    expect(marks.guesses).toEqual(['rake', 'front tyre', 'fork offset', 'swingarm pivot', 'seat']);
    expect(shapesOf(marks).some((shape) => shape.guess)).toBe(true);
    expect(shapesOf(sideView(input, TABLET)).every((shape) => !shape.guess)).toBe(true);
  });

  it('dashes the part of each figure that is assumed, and nothing else, where every figure is there', () => {
    const guessed = (assumed: MachineFigures['assumed']) =>
      shapesOf(sideView({ ...input, machine: { ...tourer, assumed } }, TABLET)).filter(
        (shape) => shape.guess,
      );
    for (const part of ['wheelbase', 'rake', 'rear tyre', 'front tyre'] as const) {
      expect(guessed([part]).length, part).toBeGreaterThan(0);
      expect(dashedSentences({ ...tourer, assumed: [part] }).join(' ')).toContain(part);
    }
    expect(guessed(['rear tyre', 'front tyre']).length).toBe(2);
    expect(dashedSentences(tourer)).toEqual([]);
  });

  it('without figures is a dashed outline and one sentence', () => {
    const marks = sideView({ ...input, machine: null }, PHONE);
    expect(shapesOf(marks).every((shape) => shape.guess)).toBe(true);
    expect(marks.sentence.map((line) => line.text).join(' ')).toBe(EMPTY_SENTENCE);
    for (const line of marks.sentence) {
      expect(isInside(textBox(line), { x: 0, y: 0, ...PHONE })).toBe(true);
    }
  });
});

describe('what is on it', () => {
  it('has its dot at its mass centre, moved with the body', () => {
    const marks = sideView({ ...input, stance: LEVEL }, TABLET);
    for (const thing of input.carried) {
      const dot = marks.dots.find(({ id }) => id === thing.id)!;
      expect((dot.at.x - marks.rearWheel.axle.x) / marks.pxPerMm).toBeCloseTo(thing.xMm, 6);
      expect((marks.groundY - dot.at.y) / marks.pxPerMm).toBeCloseTo(thing.heightMm, 6);
    }
  });

  it('has a tag each on a tablet and at a desk, for nine things', () => {
    expect(sideView(input, TABLET).untagged).toEqual([]);
    expect(sideView(input, DESK).untagged).toEqual([]);
  });

  it('has tags that hide neither each other, the kept place nor a wheel, each large enough for a finger', () => {
    fc.assert(
      fc.property(anyInput, anySize, (any, size) => {
        const marks = sideView(any, size);
        const boxes = [...marks.tags.map((tag) => tag.box), marks.keyBox!];
        boxes.forEach((box, index) => {
          expect(isInside(box, { x: 0, y: 0, width: size.width, height: marks.groundY })).toBe(true);
          expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(62);
          for (const other of boxes.slice(index + 1)) expect(boxesMeet(box, other)).toBe(false);
        });
        for (const { box } of marks.tags) {
          for (const { axle, radius } of [marks.rearWheel, marks.frontWheel]) {
            const x = Math.min(box.x + box.width, Math.max(box.x, axle.x));
            const y = Math.min(box.y + box.height, Math.max(box.y, axle.y));
            expect(Math.hypot(x - axle.x, y - axle.y)).toBeGreaterThanOrEqual(radius);
          }
        }
        expect(marks.tags.length + marks.untagged.length).toBe(any.carried.length);
      }),
      { seed: 32, numRuns: 200 },
    );
  });

  it('has leaders of one bend that cross neither each other nor another tag nor the kept place', () => {
    fc.assert(
      fc.property(anyInput, anySize, (any, size) => {
        const { tags, keyBox, dots } = sideView(any, size);
        tags.forEach((tag, index) => {
          const lines = linesOf(tag);
          expect(lines.at(-1)![1]).toEqual(dots.find(({ id }) => id === tag.id)!.at);
          for (const other of tags.slice(index + 1)) expect(meet(lines, linesOf(other))).toBe(false);
          const boxes = [...tags.filter((other) => other !== tag).map(({ box }) => box), keyBox!];
          for (const box of boxes) expect(meet(lines, edgesOf(box))).toBe(false);
        });
      }),
      { seed: 34, numRuns: 300 },
    );
  });

  it('has its words whole in the tag: two lines at most, cut only with a sign that says so', () => {
    fc.assert(
      fc.property(anyInput, anySize, (any, size) => {
        for (const { id, box, texts } of sideView(any, size).tags) {
          const thing = any.carried.find((each) => each.id === id)!;
          expect(texts.length).toBeLessThanOrEqual(3);
          for (const text of texts) expect(isInside(textBox(text), box)).toBe(true);
          const label = texts.slice(0, -1).map(({ text }) => text);
          expect(label.join(' ') === thing.label || label.at(-1)!.endsWith('…')).toBe(true);
          expect(texts.at(-1)!.text).toBe(thing.mass);
        }
      }),
      { seed: 35, numRuns: 100 },
    );
  });

  it('has every name of the eight whole, but for one word that is wider than a tag', () => {
    const eight = sideViews['eight things with long names']!;
    const cut = sideView(eight, TABLET).tags.flatMap(({ id, texts }) =>
      texts.some(({ text }) => text.endsWith('…'))
        ? [eight.carried.find((each) => each.id === id)!.label]
        : [],
    );
    expect(cut).toEqual(['Reiseapothekenwerkzeugtasche']);
  });

  it('is listed instead of tagged on a phone', () => {
    const marks = sideView(input, PHONE);
    expect(marks.tags).toEqual([]);
    expect(marks.untagged.length).toBe(9);
    expect(marks.keyBox).toBe(null);
  });

  it('keeps the tag of the selected thing before any other', () => {
    fc.assert(
      fc.property(anyInput, (any) => {
        const things = any.carried.map((thing, index) => ({ ...thing, selected: index === 3 }));
        const marks = sideView({ ...any, carried: things }, DESK);
        const dropped = things.filter((thing) => marks.untagged.includes(thing.id));
        const kept = marks.tags.length;
        if (kept > 0 && dropped.some((thing) => thing.selected)) {
          // Only a dot outside the tags' own area may cost the selected thing its tag.
          const dot = marks.dots.find((mark) => mark.selected)!;
          expect(dot.at.x < 130 || dot.at.x > DESK.width - 130 || dot.at.y < 90).toBe(true);
        }
      }),
      { seed: 33, numRuns: 60 },
    );
  });
});

describe('words on the side view', () => {
  it('are at least 16 px, and stay inside the drawing', () => {
    for (const any of Object.values(sideViews)) {
      for (const size of [TABLET, DESK, PHONE]) {
        const { axles, dimension, tags, sentence } = sideView(any, size);
        const loads = axles === null ? [] : [axles.rear, axles.whole, axles.front];
        const texts = [
          ...tags.flatMap((tag) => tag.texts),
          ...loads.flatMap((load) => [...load.texts, ...load.limit]),
          ...(axles?.limitsAt ? [axles.limitsAt] : []),
          ...(dimension === null ? [] : [dimension.text]),
          ...sentence,
        ];
        for (const text of texts) {
          expect(text.size).toBeGreaterThanOrEqual(TEXT_MIN);
          expect(isInside(textBox(text), { x: 0, y: 0, ...size })).toBe(true);
        }
      }
    }
  });

  it('in a tag stay inside it', () => {
    for (const tag of sideView(input, TABLET).tags) {
      for (const text of tag.texts) expect(isInside(textBox(text), tag.box)).toBe(true);
    }
  });

  it('measure the selected thing from the rear axle', () => {
    const marks = sideView(input, TABLET);
    const { from, to, text } = marks.dimension!;
    expect(text.text).toBe('330 behind');
    expect(from.x).toBe(marks.rearWheel.axle.x);
    expect(to.x).toBe(marks.dots.find((dot) => dot.selected)!.at.x);
  });

  it('say every thing and every wheel in the table, and what is dashed in its caption', () => {
    const table = sideViewTable({ ...input, machine: traveller });
    expect(table.rows.map(([first]) => first)).toEqual([
      ...input.carried.map((thing) => thing.label),
      'Rear wheel',
      'Front wheel',
      'Both',
    ]);
    expect(table.caption).toContain('so assumed and drawn dashed: rake, front tyre.');
    expect(table.caption).toContain('Not known and drawn dashed: fork offset, swingarm pivot, seat.');
    expect(table.caption).not.toContain('true length');
    expect(sideViewTable(input).caption).toContain('The shock has its true length');
    for (const row of table.rows) expect(row.length).toBe(table.headings.length);
  });

  it('are spoken whole', () => {
    const carrier = input.carried.find((thing) => thing.label === 'carrier')!;
    expect(sideViewSentence(carrier)).toBe(
      'carrier: 11.5 of 10; from the rear axle 330 behind; over its limit.',
    );
  });
});
