/** Bump rubbers in sentences; figures arrive formatted. */
export const rubber = {
  met: (stroke: string, travel: string) =>
    `Bump rubber: met at ${stroke} of stroke, ${travel} of wheel travel.`,
  fullBump: (pressed: string, force: string, atWheel: string) =>
    `At full bump it is pressed ${pressed} and bears ${force} each, ${atWheel} at the wheel.`,
  assumed: (name: string) =>
    `Its curve is assumed, not measured: made up for a rubber that is ${name}. Press it on a spring tester to know.`,
  clear: (load: string, left: string) =>
    `As planned no load rests on it; ${load} comes nearest, with ${left} of wheel travel left.`,
  rests: (load: string, deep: string) =>
    `As planned ${load} rests on it, ${deep} of wheel travel deep: the ride is hard there.`,
  near: (load: string, left: string) =>
    `As planned ${load} comes too near to it to tell: ${left} of wheel travel is left.`,
} as const;
