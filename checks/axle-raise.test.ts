/**
 * Height of the mass centre by raising the front wheel. The formula for equal wheels: openbooks.link, The height above
 * ground of the CG, h = r + (b − L N_f'/W) cot θ, θ = asin(H/L); no worked example for a motorcycle was found. Example 1 is
 * computed from that formula, apart from the model. For unequal wheels (example 2, masses and places of Meijaard et al.,
 * Proc. R. Soc. A 463, 1955–1982 (2007), table 1) the two weighings are derived here by moments about the rear contact.
 * Bounds: the digits as printed.
 */
import { massCentreHeight } from '@sagwright/model/masses/axleRaise';
import { describe, expect, test } from 'vitest';

describe('equal wheels: L 1.40 m, r 0.31 m, W 2500 N, b 0.68 m, h 0.55 m', () => {
  const machine = { wheelbase: 1.4, rearRadius: 0.31, frontRadius: 0.31, total: 2500, frontLevel: 1214.2857 };

  test.each([
    [0.2, 1152.4268],
    [0.4, 1086.5104],
    [0.6, 1010.9964],
  ])('raised by %f m: %f N in front give 0.55 m', (raised, frontRaised) => {
    // Loads printed to 5e-5 N; at the least raise dh/dN is 3.9 mm/N: 2e-7 m, and as much from the level reading.
    expect(massCentreHeight({ ...machine, frontRaised, raised }).height).toBeCloseTo(0.55, 6);
  });

  test('a kilogram wrong on the raised scale moves the height by 18.4 mm at 0.40 m', () => {
    const { perReading } = massCentreHeight({ ...machine, frontRaised: 1086.5104, raised: 0.4 });
    expect(-1000 * 9.80665 * perReading).toBeCloseTo(18.4, 1);
    const shifted = massCentreHeight({ ...machine, frontRaised: 1087.5104, raised: 0.4 });
    expect(shifted.height).toBeCloseTo(0.55 + perReading, 6);
  });
});

describe('unequal wheels: the bicycle benchmark, raised by 0.30 m', () => {
  // 94 kg at x 0.342127660 m, h 0.861170213 m; radii 0.30 and 0.35 m, wheelbase 1.02 m.
  const [x, h, rearRadius, frontRadius, wheelbase] = [0.34212766, 0.861170213, 0.3, 0.35, 1.02];
  const tilt = (17.236657 * Math.PI) / 180;
  const frontLevel = (94 * x) / wheelbase;
  const weighed = {
    wheelbase,
    rearRadius,
    frontRadius,
    total: 94,
    frontLevel,
    frontRaised: 15.7236,
    raised: 0.3,
  };

  test('the tilt raises the front axle by 0.30 m, and moments give both readings', () => {
    const step = frontRadius - rearRadius;
    expect(wheelbase * Math.sin(tilt) + step * (Math.cos(tilt) - 1)).toBeCloseTo(0.3, 7);
    expect(frontLevel).toBeCloseTo(31.529412, 6);
    const ahead = x * Math.cos(tilt) - (h - rearRadius) * Math.sin(tilt);
    expect((94 * ahead) / (wheelbase * Math.cos(tilt) - step * Math.sin(tilt))).toBeCloseTo(15.7236, 5);
  });

  test('the height comes back: 0.8611702 m', () => {
    // The raised reading is printed to 5e-7 kg; 36 mm for each kilogram: 2e-8 m.
    expect(massCentreHeight(weighed).height).toBeCloseTo(0.8611702, 6);
  });

  test('taken for equal wheels the height is 4 mm too low by the rear radius, 21 mm too great by the mean', () => {
    const equal = (radius: number): number =>
      massCentreHeight({ ...weighed, rearRadius: radius, frontRadius: radius }).height;
    expect(equal(0.3)).toBeCloseTo(0.85734, 5);
    expect(equal(0.325)).toBeCloseTo(0.88234, 5);
  });
});

test('a wheel that was not raised, or by more than the wheelbase, tells no height', () => {
  const machine = {
    wheelbase: 1.4,
    rearRadius: 0.31,
    frontRadius: 0.31,
    total: 2500,
    frontLevel: 1214,
    frontRaised: 1214,
  };
  expect(() => massCentreHeight({ ...machine, raised: 0 })).toThrow('raised by 0 m');
  expect(() => massCentreHeight({ ...machine, raised: 1.4 })).toThrow('raised by 1.4 m, wheelbase 1.4 m');
  expect(() => massCentreHeight({ ...machine, total: 0, raised: 0.4 })).toThrow('total 0');
});
