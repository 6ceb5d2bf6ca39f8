import { describe, expect, test } from 'vitest';
import { parseJob } from './read.ts';
import { leastJobWith } from './testing/leastJob.ts';

type Change = [path: string, value: unknown];

/** All that is wrong with the least job after some changes: "path: code". */
function problemsWith(...changes: Change[]): string[] {
  const result = parseJob(leastJobWith(...changes));
  return result.ok ? [] : result.problems.map(({ path, code }) => `${path}: ${code}`);
}

function messageWith(...changes: Change[]): string {
  const result = parseJob(leastJobWith(...changes));
  return result.ok ? '' : result.problems[0]!.message;
}

const mm = (value: number) => ({ value, unit: 'mm' });
const inch = (value: number) => ({ value, unit: 'in' });
const kg = (value: number) => ({ value, unit: 'kg' });
const litres = (value: number) => ({ value, unit: 'l' });
const perMm = (value: number) => ({ value, unit: 'N/mm' });

describe('springs', () => {
  const rate = 'springs.a.rate';

  test('of the set-up and the choice must be there, and be of that end', () => {
    expect(problemsWith(['springs', {}])).toEqual(['setups.asFound.rear.single.spring: noSuch']);
    expect(messageWith(['springs', {}])).toContain(
      'found "a", but no such spring; there is none yet. Add it',
    );
    expect(problemsWith(['choice', { rear: 'b' }])).toEqual(['choice.rear: noSuch']);
    expect(problemsWith(['choice', { front: 'a' }])).toEqual(['choice.front: springOfOtherEnd']);
    expect(messageWith(['choice', { front: 'a' }])).toContain('"a" is a rear spring; this is the front');
  });

  test('by table start from 0 and rise in both columns', () => {
    const row = (compression: number, newton: number) => ({
      compression: mm(compression),
      force: { value: newton, unit: 'N' },
    });
    const table = (...rows: object[]): Change => [rate, { kind: 'table', rows }];
    expect(problemsWith(table(row(0, 0), row(10, 200), row(20, 500)))).toEqual([]);
    expect(problemsWith(table(row(0, 5), row(10, 200)))).toEqual([`${rate}.rows.0.force: notFromZero`]);
    expect(problemsWith(table(row(0, 0), row(20, 500), row(10, 600)))).toEqual([
      `${rate}.rows.2.compression: notRising`,
    ]);
    expect(messageWith(table(row(0, 0), row(20, 500), row(30, 500)))).toContain(
      'Springs, a, rate, rows, no. 3, force: found 500 N after 500 N',
    );
  });

  test('in series have the soft one softer', () => {
    const series = { kind: 'series', soft: perMm(90), stiff: perMm(40), softCloses: mm(20) };
    expect(problemsWith([rate, series])).toEqual([`${rate}.soft: softerIsStiffer`]);
    expect(problemsWith([rate, { ...series, soft: { value: 100, unit: 'lbf/in' } }])).toEqual([]);
  });

  test('given as a coil have one diameter, room inside and coils left to give', () => {
    const coil = { kind: 'coil', wire: mm(10), coils: 8, ends: 'closed ground', material: 'chrome silicon' };
    expect(problemsWith([rate, { ...coil, mean: mm(60) }])).toEqual([]);
    expect(problemsWith([rate, coil])).toEqual([`${rate}.outside: oneDiameter`]);
    expect(problemsWith([rate, { ...coil, mean: mm(60), outside: mm(70) }])).toEqual([
      `${rate}.outside: oneDiameter`,
    ]);
    expect(problemsWith([rate, { ...coil, outside: mm(29) }])).toEqual([`${rate}.outside: coilTooTight`]);
    expect(problemsWith([rate, { ...coil, mean: mm(60), coils: 2.5 }])).toEqual([
      `${rate}.coils: tooFewCoils`,
    ]);
    expect(problemsWith([rate, { ...coil, mean: mm(60), coils: 2.5, ends: 'plain' }])).toEqual([]);
  });

  test('are shorter solid than free, in whatever units', () => {
    expect(problemsWith(['springs.a.freeLength', inch(8)], ['springs.a.solidLength', mm(203.2)])).toEqual([
      'springs.a.solidLength: notBelow',
    ]);
    expect(problemsWith(['springs.a.freeLength', inch(8)], ['springs.a.solidLength', mm(100)])).toEqual([]);
  });
});

describe('travel', () => {
  const travel = 'machine.rear.travel';
  const stroke: Change = ['machine.rear.shock.stroke', mm(60)];
  const table = (...rows: [number, number][]): Change => [
    travel,
    { kind: 'table', rows: rows.map(([wheel, shock]) => ({ wheel: mm(wheel), shock: mm(shock) })) },
  ];
  const taped = (...points: [number, number][]): Change => [
    travel,
    {
      kind: 'taped',
      points: Object.fromEntries(
        points.map(([wheel, shock], i) => [`p${i}`, { order: i, wheel: mm(wheel), shock: mm(shock) }]),
      ),
    },
  ];

  const at = (x: number, height: number) => ({ x: mm(x), height: mm(height) });
  const pointed: readonly Change[] = [
    [travel, { kind: 'direct', armEye: at(60, 365), frameEye: at(150, 675) }],
    ['machine.rear.pivot', at(560, 365)],
    ['machine.rear.tyre', { radius: mm(318) }],
    ['machine.rear.shock.length', mm(323)],
  ];

  test('by hard points has a pivot, a tyre radius and a shock length to stand on', () => {
    expect(problemsWith(...pointed)).toEqual([]);
    const without = (path: string) => problemsWith(...pointed, [path, undefined]);
    expect(without('machine.rear.pivot')).toEqual(['machine.rear.pivot: pointsNeed']);
    expect(without('machine.rear.tyre')).toEqual(['machine.rear.tyre.radius: pointsNeed']);
    expect(without('machine.rear.shock.length')).toEqual(['machine.rear.shock.length: pointsNeed']);
    expect(messageWith(...pointed, ['machine.rear.pivot', undefined])).toBe(
      "Machine, rear, pivot: missing; hard points need the swingarm's pivot, which they turn about. Add it, or give the travel as a ratio or by rows.",
    );
  });

  test('by hard points says itself where it was read', () => {
    expect(problemsWith(...pointed, ['machine.rear.measuredAt', mm(20)])).toEqual([
      'machine.rear.measuredAt: followsFromPoints',
    ]);
  });

  test('by tape has its lengths between two parts of its own kind, and leaning less than they are long', () => {
    const length = { kind: 'between', order: 1, from: 'arm eye', to: 'frame eye', length: mm(323) };
    const taped = (changes: object): Change => [`${travel}.tape`, { a: { ...length, ...changes } }];
    expect(problemsWith(...pointed, taped({}))).toEqual([]);
    expect(problemsWith(...pointed, taped({ to: 'arm eye' }))).toEqual([`${travel}.tape.a.to: sameEnds`]);
    expect(problemsWith(...pointed, taped({ to: 'link pin' }))).toEqual([`${travel}.tape.a.to: wrongWord`]);
    expect(problemsWith(...pointed, taped({ sideways: mm(40) }))).toEqual([]);
    expect(problemsWith(...pointed, taped({ length: mm(60), sideways: mm(60) }))).toEqual([
      `${travel}.tape.a.sideways: notBelow`,
    ]);
    // The shock's own lean counts between its eyes, and nowhere else.
    const leaning: Change = [`${travel}.sideways`, mm(80)];
    expect(problemsWith(...pointed, leaning, taped({ length: mm(70) }))).toEqual([
      `${travel}.tape.a.length: notBelow`,
    ]);
    expect(problemsWith(...pointed, leaning, taped({ length: mm(70), to: 'pivot' }))).toEqual([]);
  });

  test('by a linkage names what each part is on, and every part', () => {
    const linkage = {
      kind: 'linkage',
      rocker: { on: 'frame', pivot: at(553, 308), pin: at(457, 254) },
      linkEnd: at(401, 357),
      rockerEye: at(399, 242),
      farEye: { on: 'frame', ...at(534, 564) },
    };
    const [, ...others] = pointed;
    expect(problemsWith([travel, linkage], ...others)).toEqual([]);
    const { linkEnd: _, ...unlinked } = linkage;
    expect(problemsWith([travel, unlinked], ...others)).toEqual([`${travel}.linkEnd: missing`]);
    expect(problemsWith([travel, linkage], ...others, [`${travel}.farEye.on`, 'rocker'])).toEqual([
      `${travel}.farEye.on: wrongWord`,
    ]);
  });

  test('by table has the wheel rise and the shock get shorter', () => {
    expect(problemsWith(table([0, 330], [40, 310], [80, 288]))).toEqual([]);
    expect(problemsWith(table([0, 330], [40, 310], [30, 300]))).toEqual([
      `${travel}.rows.2.wheel: notRising`,
    ]);
    expect(problemsWith(table([0, 330], [40, 310], [80, 315]))).toEqual([
      `${travel}.rows.2.shock: notFalling`,
    ]);
    expect(messageWith(table([0, 330], [40, 310], [80, 315]))).toContain('found 315 mm after 310 mm');
  });

  test('by table stays within what the stroke and the length allow', () => {
    expect(problemsWith(table([0, 330], [40, 300], [80, 270]), stroke)).toEqual([]);
    expect(problemsWith(table([0, 330], [40, 300], [80, 268]), stroke)).toEqual([
      `${travel}.rows: beyondStroke`,
    ]);
    expect(messageWith(table([0, 330], [40, 300], [80, 268]), stroke)).toContain(
      'goes from 330 mm to 268 mm, which is more than its stroke of 60 mm allows',
    );
    expect(
      problemsWith(table([0, 330], [40, 300], [80, 270]), ['machine.rear.shock.length', mm(325)]),
    ).toEqual([`${travel}.rows: beyondLength`]);
  });

  test('by tape has four points, and may have a height twice', () => {
    expect(problemsWith(taped([0, 330], [30, 312], [60, 296], [90, 278]))).toEqual([]);
    expect(problemsWith(taped([0, 330], [30, 312], [30, 313], [60, 296]))).toEqual([]);
    expect(problemsWith(taped([0, 330], [30, 312], [60, 296]))).toEqual([`${travel}.points: tooFewTaped`]);
    expect(problemsWith(taped([0, 330], [0, 331], [60, 296], [60, 297]))).toEqual([
      `${travel}.points: tooFewTaped`,
    ]);
    expect(problemsWith(taped([90, 278], [0, 330], [60, 296], [30, 295]))).toEqual([
      `${travel}.points.p2.shock: tapedBackwards`,
    ]);
  });

  test('by tape may be off the stroke by a millimetre at each end', () => {
    expect(problemsWith(taped([0, 331], [30, 312], [60, 296], [90, 269.5]), stroke)).toEqual([]);
    expect(problemsWith(taped([0, 331], [30, 312], [60, 296], [90, 268]), stroke)).toEqual([
      `${travel}.points: beyondStroke`,
    ]);
  });

  test('by a ratio is what a wheel can have', () => {
    const ratio = (kind: string, value: number, unit: string): Change => [
      travel,
      { kind, ratio: { value, unit } },
    ];
    expect(problemsWith(ratio('leverage', 2.5, 'wheel/shock'), stroke)).toEqual([]);
    expect(problemsWith(ratio('motion', 0.4, 'shock/wheel'), stroke)).toEqual([]);
    const long: Change = ['machine.rear.shock.stroke', mm(120)];
    // 120 mm · 5 = 600 mm, and 120 mm / 0.2 as well
    expect(messageWith(ratio('leverage', 5, 'wheel/shock'), long)).toContain(
      'together give 600 mm of wheel travel',
    );
    expect(problemsWith(ratio('motion', 0.2, 'shock/wheel'), long)).toEqual([
      `${travel}.ratio: tooMuchTravel`,
    ]);
    expect(problemsWith(ratio('leverage', 0.4, 'wheel/shock'))).toEqual([
      `${travel}.ratio.value: outOfBounds`,
    ]);
    expect(problemsWith(ratio('leverage', 2.5, 'shock/wheel'))).toEqual([`${travel}.ratio.unit: wrongUnit`]);
  });
});

describe('shock and fork', () => {
  const shock = 'machine.rear.shock';
  const stroke: Change = [`${shock}.stroke`, mm(60)];

  test('have the force of a rubber told in one way, by a table that rises from 0', () => {
    const start = mm(50);
    const rows = [0, 4, 9].map((each) => ({
      compression: mm(each),
      force: { value: 40 * each ** 2, unit: 'N' },
    }));
    const rubber = (value: object): string[] => problemsWith([`${shock}.rubber`, value]);
    expect(rubber({ start, rows })).toEqual([]);
    expect(rubber({ start })).toEqual([`${shock}.rubber.rate: oneRubber`]);
    expect(rubber({ start, rows, assumed: 'middling' })).toEqual([`${shock}.rubber.rate: oneRubber`]);
    expect(rubber({ rows })).toEqual([`${shock}.rubber.start: rubberStartNeeded`]);
    expect(rubber({ start, rows: rows.slice(1) })).toEqual([
      `${shock}.rubber.rows.0.compression: notFromZero`,
      `${shock}.rubber.rows.0.force: notFromZero`,
    ]);
    expect(rubber({ start, rows: [rows[0], rows[2], rows[1]] })).toEqual([
      `${shock}.rubber.rows.2.compression: notRising`,
      `${shock}.rubber.rows.2.force: notRising`,
    ]);
    expect(rubber({ start, rows, hardening: { value: 4, unit: 'N/mm^3' } })).toEqual([
      `${shock}.rubber.hardening: hardeningOfRate`,
    ]);
  });

  test('have rubber and top-out spring within the stroke', () => {
    const rubber = { start: mm(60), rate: perMm(80) };
    expect(problemsWith(stroke, [`${shock}.rubber`, rubber])).toEqual([`${shock}.rubber.start: notBelow`]);
    expect(problemsWith(stroke, [`${shock}.rubber`, 'none'])).toEqual([]);
    expect(problemsWith(stroke, [`${shock}.rubber`, { assumed: 'middling' }])).toEqual([]);
    const fork = { stroke: mm(120), topOut: { length: mm(130), rate: perMm(10) } };
    expect(problemsWith(['machine.front.fork', fork])).toEqual([
      'machine.front.fork.topOut.length: notBelow',
    ]);
  });

  test('leave the gas some room beside the shaft', () => {
    // π/4 · (14 mm)² · 60 mm = 9.236 cm³
    const gas = (ml: number) => ({
      shaft: mm(14),
      pressure: { value: 10, unit: 'bar' },
      volume: { value: ml, unit: 'ml' },
    });
    expect(problemsWith(stroke, [`${shock}.gas`, gas(9.24)])).toEqual([]);
    expect(problemsWith(stroke, [`${shock}.gas`, gas(9.23)])).toEqual([`${shock}.gas.volume: gasTooSmall`]);
    expect(messageWith(stroke, [`${shock}.gas`, gas(9)])).toContain(
      'found 9 ml; the shaft alone takes up 9.2 cm3',
    );
  });

  test('are longer than their stroke, and adjusted within the ends of their thread', () => {
    expect(problemsWith(stroke, [`${shock}.length`, inch(13)])).toEqual([]);
    expect(problemsWith([`${shock}.stroke`, mm(120)], [`${shock}.length`, mm(110)])).toEqual([
      `${shock}.stroke: notBelow`,
    ]);
    const adjuster = { change: mm(9), least: mm(-2), most: mm(8) };
    expect(problemsWith([`${shock}.lengthAdjuster`, adjuster])).toEqual([
      `${shock}.lengthAdjuster.change: outsideEnds`,
    ]);
  });
});

describe('adjusters and settings', () => {
  const adjuster = 'machine.rear.shock.adjuster';
  const at = 'setups.asFound.rear.single.at';
  const collar = {
    kind: 'collar',
    lead: mm(1.5),
    between: 'collar, upper face',
    and: 'body, lower face',
    reading: 'shrinks with preload',
    least: mm(12),
    most: mm(30),
  };

  test('of a collar are read within its range, its ends given in either order', () => {
    expect(problemsWith([adjuster, collar], [at, { reading: mm(30) }])).toEqual([]);
    expect(problemsWith([adjuster, collar], [at, { reading: mm(31) }])).toEqual([
      `${at}.reading: outsideEnds`,
    ]);
    const turned = { ...collar, least: mm(30), most: mm(12) };
    expect(problemsWith([adjuster, turned], [at, { reading: mm(20) }])).toEqual([]);
    expect(problemsWith([adjuster, turned], [at, { reading: mm(11) }])).toEqual([
      `${at}.reading: outsideEnds`,
    ]);
    expect(messageWith([adjuster, collar], [at, { reading: mm(31) }])).toBe(
      'Setups, as found, rear, single, where the adjuster stands, reading: found 31 mm; allowed: 12 mm to 30 mm. Read it again, or correct the ends.',
    );
  });

  test('of a collar have two ends, with the known readings between them', () => {
    const set: Change = [at, { reading: mm(12) }];
    expect(problemsWith([adjuster, { ...collar, most: mm(12) }], set)).toEqual([`${adjuster}.most: noRange`]);
    expect(problemsWith([adjuster, { ...collar, touches: mm(40) }], set)).toEqual([
      `${adjuster}.touches: outsideEnds`,
    ]);
    const springLength = { at: mm(10), length: mm(180) };
    expect(problemsWith([adjuster, { ...collar, springLength }], set)).toEqual([
      `${adjuster}.springLength.at: outsideEnds`,
    ]);
  });

  test('of a cam begin at 0, rise, and have the step that is set', () => {
    const cam = (...steps: number[]): Change => [adjuster, { kind: 'cam', steps: steps.map(mm) }];
    expect(problemsWith(cam(0, 2, 4), [at, { step: 3 }])).toEqual([]);
    expect(problemsWith(cam(0, 2, 4), [at, { step: 4 }])).toEqual([`${at}.step: outsideEnds`]);
    expect(problemsWith(cam(1, 2), [at, { step: 1 }])).toEqual([`${adjuster}.steps.0: notFromZero`]);
    expect(problemsWith(cam(0, 2, 2), [at, { step: 1 }])).toEqual([`${adjuster}.steps.2: notRising`]);
  });

  test('of the other kinds stay within what they have', () => {
    const cap = { kind: 'cap', lead: mm(1), turns: 10 };
    expect(problemsWith([adjuster, cap], [at, { turns: 10 }])).toEqual([]);
    expect(problemsWith([adjuster, cap], [at, { turns: 10.25 }])).toEqual([`${at}.turns: outsideEnds`]);
    const clicks = { kind: 'clicks', perClick: mm(0.4), count: 30 };
    expect(problemsWith([adjuster, clicks], [at, { click: 31 }])).toEqual([`${at}.click: outsideEnds`]);
    expect(problemsWith([adjuster, { ...clicks, dead: 30 }], [at, { click: 0 }])).toEqual([
      `${adjuster}.dead: notBelow`,
    ]);
    const spacer = { kind: 'spacer', least: mm(20), most: mm(60), cut: mm(1) };
    expect(problemsWith([adjuster, spacer], [at, { spacer: inch(1) }])).toEqual([]);
    expect(problemsWith([adjuster, spacer], [at, { spacer: inch(3) }])).toEqual([
      `${at}.spacer: outsideEnds`,
    ]);
    expect(problemsWith([adjuster, { ...spacer, most: mm(10) }], [at, { spacer: mm(15) }])).toEqual([
      `${adjuster}.least: notAtMost`,
    ]);
  });

  test('are given in the terms of the adjuster that is there, or as preload', () => {
    expect(problemsWith([adjuster, collar], [at, { turns: 3 }])).toEqual([
      `${at}.turns: settingOfOtherAdjuster`,
    ]);
    expect(messageWith([adjuster, collar], [at, { turns: 3 }])).toContain(
      'found "turns", but the adjuster is of the kind "collar"; needed: "reading" or "preload".',
    );
    expect(problemsWith([adjuster, collar], [at, { preload: mm(8) }])).toEqual([]);
    expect(problemsWith([adjuster, collar], [at, { reading: mm(20), preload: mm(8) }])).toEqual([]);
    expect(problemsWith([at, { reading: mm(20) }])).toEqual([`${at}.reading: settingOfOtherAdjuster`]);
  });

  test('are told of each shock that there is', () => {
    const side = { spring: 'a', at: { preload: mm(5) } };
    const two: Change = ['machine.rear.shock.count', 2];
    expect(problemsWith(['setups.asFound.rear', { both: side }])).toEqual([
      'setups.asFound.rear: sidesOfOneShock',
    ]);
    expect(problemsWith(two)).toEqual(['setups.asFound.rear.single: oneSideOfTwo']);
    expect(problemsWith(two, ['setups.asFound.rear', { left: side, right: side }])).toEqual([]);
    expect(
      problemsWith(two, ['setups.asFound.rear', { left: side, right: { ...side, spring: 'b' } }]),
    ).toEqual(['setups.asFound.rear.right.spring: noSuch']);
  });
});

describe('the machine', () => {
  test('weighs more at each wheel than what hangs on the axle', () => {
    expect(problemsWith(['machine.rear.unsprung', kg(199)])).toEqual([]);
    expect(problemsWith(['machine.rear.unsprung', kg(200)])).toEqual(['machine.rear.unsprung: notBelow']);
    expect(
      problemsWith(
        ['machine.weighing.front', kg(90)],
        ['machine.front.unsprung', { value: 199, unit: 'lb' }],
      ),
    ).toEqual([
      'machine.front.unsprung: notBelow', // 90.26 kg
    ]);
  });

  test('has no more fuel than its tank holds', () => {
    const tank: Change = ['machine.tank', { capacity: { value: 5, unit: 'gal (US)' } }]; // 18.93 l
    expect(problemsWith(tank, ['machine.weighing.fuel', litres(18.9)])).toEqual([]);
    expect(problemsWith(tank, ['machine.weighing.fuel', litres(19)])).toEqual([
      'machine.weighing.fuel: notAtMost',
    ]);
    const load = { name: 'full', order: 1, share: 10, aboard: {}, fuel: litres(20) };
    expect(problemsWith(tank, ['loadCases.full', load])).toEqual(['loadCases.full.fuel: notAtMost']);
  });

  test('was measured at a travel that it has', () => {
    const stroke: Change = ['machine.rear.shock.stroke', mm(60)]; // 66 mm of wheel travel at 1.1
    expect(problemsWith(stroke, ['machine.rear.measuredAt', mm(66)])).toEqual([]);
    expect(problemsWith(stroke, ['machine.rear.measuredAt', mm(66.1)])).toEqual([
      'machine.rear.measuredAt: notAtMost',
    ]);
    expect(problemsWith(['machine.front', { measuredAt: mm(130), fork: { stroke: mm(120) } }])).toEqual([
      'machine.front.measuredAt: notAtMost',
    ]);
  });

  test('has places that stand on something, and not on themselves', () => {
    const place = (carriedBy?: string) => ({
      name: 'x',
      order: 1,
      kind: 'rack',
      ...(carriedBy ? { carriedBy } : {}),
    });
    expect(
      problemsWith(['machine.places', { rack: place(), box: place('rack'), roll: place('box') }]),
    ).toEqual([]);
    expect(problemsWith(['machine.places', { box: place('rak'), rack: place() }])).toEqual([
      'machine.places.box.carriedBy: noSuch',
    ]);
    expect(messageWith(['machine.places', { box: place('rak'), rack: place() }])).toContain(
      'Did you mean "rack"?',
    );
    expect(problemsWith(['machine.places', { a: place('b'), b: place('a'), c: place('a') }])).toEqual([
      'machine.places.a.carriedBy: carriedInCircle',
      'machine.places.b.carriedBy: carriedInCircle',
    ]);
    expect(problemsWith(['machine.places', { a: place('a') }])).toEqual([
      'machine.places.a.carriedBy: carriedInCircle',
    ]);
  });
});

describe('load cases and targets', () => {
  const load = (share: number, aboard: object = {}) => ({ name: 'x', order: 1, share, aboard });
  const thing: Change = ['things.tent', { name: 'tent', order: 1, kind: 'item', mass: kg(4) }];
  const place: Change = ['machine.places.rack', { name: 'rack', order: 1, kind: 'rack' }];

  test('have things and places that exist, each thing once', () => {
    const on = { thing: 'tent', place: 'rack' };
    expect(problemsWith(thing, place, ['loadCases.x', load(10, { a: on })])).toEqual([]);
    expect(problemsWith(['loadCases.x', load(10, { a: on })])).toEqual([
      'loadCases.x.aboard.a.thing: noSuch',
      'loadCases.x.aboard.a.place: noSuch',
    ]);
    expect(problemsWith(thing, place, ['loadCases.x', load(10, { a: on, b: on })])).toEqual([
      'loadCases.x.aboard.b.thing: aboardTwice',
    ]);
  });

  test('share one whole, give or take the rounding', () => {
    const shares = (...each: number[]): Change => [
      'loadCases',
      Object.fromEntries(each.map((s, i) => [`l${i}`, load(s)])),
    ];
    expect(problemsWith(shares(33.5, 33.5, 33.5))).toEqual([]);
    expect(problemsWith(shares(40, 40, 21))).toEqual(['loadCases: sharesOverWhole']);
    expect(messageWith(shares(40, 40, 21))).toContain('the shares come to 101 %');
    expect(problemsWith(shares(20))).toEqual([]);
  });

  test('want a sag with its band in order, all of one sort', () => {
    const share = (value: number) => ({ value, unit: '%' });
    const wanted = (low: object, aim: object, high: object) => ({
      low,
      aim,
      high,
      from: 'stop',
      along: 'wheel',
    });
    const inCase = (sag: object): Change => ['loadCases.x', { ...load(10), wanted: { rear: sag } }];
    expect(problemsWith(inCase(wanted(share(28), share(30), share(33))))).toEqual([]);
    expect(problemsWith(inCase(wanted(mm(30), inch(1.25), mm(33))))).toEqual([]); // 31.75 mm
    expect(problemsWith(inCase(wanted(share(31), share(30), share(33))))).toEqual([
      'loadCases.x.wanted.rear.aim: wantedOrder',
    ]);
    expect(problemsWith(inCase(wanted(share(28), mm(30), share(33))))).toEqual([
      'loadCases.x.wanted.rear.aim: wantedMixed',
    ]);
    expect(problemsWith(inCase(wanted(share(28), share(30), share(130))))).toEqual([
      'loadCases.x.wanted.rear.high.value: outOfBounds',
    ]);
    const row = { order: 1, end: 'rear', people: { least: 2, most: 1 }, wanted: wanted(mm(3), mm(2), mm(4)) };
    expect(problemsWith(['targetSets.s', { name: 's', order: 1, origin: 'us', rows: { r: row } }])).toEqual([
      'targetSets.s.rows.r.people.least: notAtMost',
      'targetSets.s.rows.r.wanted.aim: wantedOrder',
    ]);
  });

  test('use a target set that exists', () => {
    expect(problemsWith(['targetSet', 's'])).toEqual(['targetSet: noSuch']);
  });
});

describe('a fork', () => {
  const fork = 'machine.front.fork';

  test('of conventional tubes has a bore below what its seal runs on', () => {
    const air = { bore: mm(41), seal: mm(37), gap: mm(120) };
    expect(problemsWith([`${fork}.air`, air])).toEqual([]);
    expect(problemsWith([`${fork}.tubes`, 'conventional'], [`${fork}.air`, air])).toEqual([
      `${fork}.air.bore: notBelow`,
    ]);
    expect(problemsWith([`${fork}.tubes`, 'inverted'], [`${fork}.air`, air])).toEqual([]);
    const apart = { left: air, right: { ...air, bore: mm(35) } };
    expect(problemsWith([`${fork}.tubes`, 'conventional'], [`${fork}.air`, apart])).toEqual([
      `${fork}.air.left.bore: notBelow`,
    ]);
  });

  test('has what moves with its wheel told whole or in parts, not both', () => {
    const parts = { wheel: kg(15) };
    const front = 'machine.front';
    expect(problemsWith([`${front}.unsprung`, undefined], [`${front}.unsprungParts`, parts])).toEqual([]);
    expect(problemsWith([`${front}.unsprung`, kg(23)], [`${front}.unsprungParts`, parts])).toEqual([
      `${front}.unsprungParts: unsprungTwice`,
    ]);
  });

  test('says once how long the installed spring is, and once how long its spacer', () => {
    const stack = { room: mm(520), readAt: 'fully out', spacer: mm(120) };
    const cap = { kind: 'cap', lead: mm(1), turns: 10 };
    expect(problemsWith([`${fork}.stack`, stack], [`${fork}.adjuster`, cap])).toEqual([]);
    expect(
      problemsWith([`${fork}.stack`, stack], [`${fork}.adjuster`, { ...cap, springLength: mm(300) }]),
    ).toEqual([`${fork}.adjuster.springLength: springLengthTwice`]);
    const spacer = { kind: 'spacer', least: mm(100), most: mm(160), cut: mm(1) };
    expect(problemsWith([`${fork}.stack`, stack], [`${fork}.adjuster`, spacer])).toEqual([
      `${fork}.stack.spacer: spacerTwice`,
    ]);
  });
});

describe('a front that is no telescopic fork', () => {
  const front = 'machine.front';
  const motion = { kind: 'motion', ratio: { value: 0.8, unit: 'shock/wheel' } };

  test('needs the stroke of its springs and what stands in it', () => {
    expect(problemsWith([`${front}.travel`, motion])).toEqual([
      `${front}.fork.stroke: missing`,
      'setups.asFound.front: missing',
    ]);
  });

  test('has nothing that only a fork has', () => {
    const fork = {
      tubes: 'inverted',
      air: { gap: mm(120) },
      stack: { room: mm(500) },
      clampHeight: { now: mm(5) },
    };
    const told = problemsWith([`${front}.travel`, motion], [`${front}.fork`, fork]);
    expect(told.filter((each) => each.endsWith('onlyOfFork'))).toEqual([
      `${front}.fork.tubes: onlyOfFork`,
      `${front}.fork.stack: onlyOfFork`,
      `${front}.fork.clampHeight: onlyOfFork`,
      `${front}.fork.air: onlyOfFork`,
    ]);
  });

  test('told by its forces has rows that rise, and nothing to set beside them', () => {
    const row = (wheel: number, force: number) => ({ wheel: mm(wheel), force: { value: force, unit: 'N' } });
    const rows = [row(0, 300), row(50, 1500), row(100, 1400)];
    expect(problemsWith([`${front}.travel`, { kind: 'force', rows }])).toEqual([
      `${front}.travel.rows.2.force: notRising`,
    ]);
    const good = { kind: 'force', rows: rows.slice(0, 2).concat(row(100, 3000)) };
    expect(problemsWith([`${front}.travel`, good], [`${front}.fork`, { stroke: mm(100) }])).toEqual([
      `${front}.fork.stroke: forcesAlready`,
    ]);
  });
});

describe('what is being fitted', () => {
  test('has sleeves with a wall, and only torques that come from the manual', () => {
    const rear = (told: object): Change => ['fitting', { rear: told }];
    const sleeve = { inner: inch(0.5), outer: mm(12.7) };
    expect(problemsWith(rear({ top: { sleeve } }))).toEqual(['fitting.rear.top.sleeve.inner: notBelow']);
    expect(problemsWith(rear({ top: { sleeve: { inner: inch(0.5) } } }))).toEqual([]);
    const torque = (origin: string) =>
      rear({ torques: { bracket: { value: { value: 9, unit: 'N·m', origin } } } });
    expect(problemsWith(torque('told'))).toEqual([
      'fitting.rear.torques.bracket.value.origin: torqueFromManual',
    ]);
    expect(problemsWith(torque('manual'))).toEqual([]);
  });
});
