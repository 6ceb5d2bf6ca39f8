/**
 * Least motion ratio that a rear may have fully out and at full bump: 20 mm of wheel for each of the shock. Below it a
 * millimetre of doubt in the stroke is centimetres of wheel travel, and no machine is built so (common practice, no source).
 */
export const LEAST_RATIO = 0.05;
