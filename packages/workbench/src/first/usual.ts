import type { Assumption } from '../inputs/assumptions.ts';
import { firstUsual as words } from '../words/english/first.ts';
import type { ShockCount } from './entries.ts';

/**
 * What a job cannot leave out and eight entries do not tell. Common practice, no source. How far a collar goes is not among it: a
 * guess there would say what is in reach.
 */
export const usual = {
  /** The front scale as a share of the rear one. */
  frontOfRear: {
    share: 0.85,
    plusMinus: { value: 14, unit: '%' },
    why: 'heavy machines alone stand on their front wheel with 42 to 49 % of their mass',
  },
  /** Wheel travel per shock stroke, by the number of shocks. */
  ratio: {
    2: {
      value: 1.15,
      unit: 'wheel/shock',
      plusMinus: { value: 0.15, unit: 'wheel/shock' },
      why: 'two shocks on a plain swingarm have 1.0 to 1.3',
    },
    1: {
      value: 2.2,
      unit: 'wheel/shock',
      plusMinus: { value: 0.5, unit: 'wheel/shock' },
      why: 'single shocks, most through a linkage, have 1.7 to 2.7',
    },
  } satisfies { readonly [C in ShockCount]: Assumption },
  /** It tells turns only, never where the collar belongs. */
  lead: {
    value: 1.5,
    unit: 'mm',
    plusMinus: { value: 0.4, unit: 'mm' },
    why: 'threads of preload collars have 1 to 2 mm a turn',
  } satisfies Assumption,
  /** Of a shock without a collar. */
  preload: {
    value: 10,
    unit: 'mm',
    plusMinus: { value: 8, unit: 'mm' },
    why: 'springs without a collar are fitted 2 to 18 mm shorter than free',
  } satisfies Assumption,
} as const;

/** Each usual figure that a first job of so many shocks takes, with its ± and its reason. */
export function usualSaid(shocks: ShockCount, hasCollar: boolean): readonly string[] {
  const { frontOfRear, ratio, lead, preload } = usual;
  const said = ({ value, unit, plusMinus, why }: Assumption) =>
    [`${value} ± ${plusMinus.value} ${unit}`, why] as const;
  return [
    words.ratio(...said(ratio[shocks])),
    words.front(`${frontOfRear.share} ± ${frontOfRear.plusMinus.value} %`, frontOfRear.why),
    hasCollar ? words.lead(...said(lead)) : words.preload(...said(preload)),
  ];
}
