import type { LimitResult } from '@sagwright/model/limits/limits';
import type { FitDocument } from '../../springs/document.ts';

/** Whether a spring fits its shock, in sentences; figures arrive formatted. */
export const springFit = {
  around: {
    within: (room) => `Fit: it goes over the body with ${room} to spare across.`,
    'within its ±': (room) => `Fit: ${room} to spare across over the body, less than its ±: try it on.`,
    over: (room) => `Fit: it does not go over the body, ${room} too narrow.`,
  } satisfies Checked,
  aroundNeeds: (needs: string) => `Fit over the body: not checked, figure needed: ${needs}, with calipers.`,
  spacer: (height: string) =>
    `It stands on a spacer of ${height}: so much more preload with the adjuster where it is, and so much less room before its coils touch.`,
  loosest: {
    held: (preload: string) =>
      `At its loosest it is pressed ${preload}: fit it with a spring compressor, never by the collar.`,
    loose: (gap: string) =>
      `At its loosest it hangs loose by ${gap}: it goes in without a compressor, and must not be left so with the wheel in the air.`,
    'within its ±': (preload: string) =>
      `At its loosest it is pressed ${preload}, too near to loose to tell: have a compressor at hand.`,
  } satisfies { readonly [V in FitDocument['atLoosest']]: (figure: string) => string },
  lengths: (loosest: string, tightest: string) =>
    `It is ${loosest} long at its loosest, ${tightest} at its tightest.`,
  coilBind: {
    within: (room) =>
      `At its tightest and full bump ${room} are left before its coils touch, beside 2 mm kept in hand.`,
    'within its ±': (room) =>
      `At its tightest and full bump ${room} are left before its coils touch, beside 2 mm kept in hand: less than the ±.`,
    over: (room) =>
      `At its tightest and full bump its coils touch before the shock is in: ${room} too little, 2 mm kept in hand.`,
  } satisfies Checked,
  coilBindNeeds: (needs: string) => `Coil bind at its tightest: not checked, figure needed: ${needs}.`,
} as const;

type Checked = { readonly [V in Exclude<LimitResult['verdict'], 'not checked'>]: (room: string) => string };
