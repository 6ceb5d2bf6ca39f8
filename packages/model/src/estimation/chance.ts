/**
 * Whether squares that are left are more than chance leaves once in a thousand, if all is as stated:
 *   (χ²/ν)^(1/3) > 1 − 2/(9ν) + z·√(2/(9ν))
 * misfit   χ², a sum of squares in their own deviations; readings that only say "at least" or "at most" make it less
 * freedom  ν, what that comes to on average; where it is 0 nothing is left over to tell by, and nothing is beyond chance
 * Valid: ν ≥ 1; 3.1 % above the tabled limit at ν = 1, 1.2 % at 5, less above.
 * Source: E. B. Wilson, M. M. Hilferty, The distribution of chi-square, PNAS 17 (1931) 684. From memory.
 */
export function isBeyondChance(misfit: number, freedom: number): boolean {
  if (freedom < 1) return false;
  const ninth = 2 / (9 * freedom);
  return Math.cbrt(misfit / freedom) > 1 - ninth + ONCE_IN_A_THOUSAND * Math.sqrt(ninth);
}

/** A standard normal number beyond this, on one side. */
const ONCE_IN_A_THOUSAND = 3.0902;
