/** A stream of random numbers; the same seed gives the same stream. */
export interface Random {
  /** Next number, evenly spread over 0 <= u < 1, in steps of 2^-53. */
  uniform(): number;
  /** Next number of the normal distribution with mean 0 and standard deviation 1. */
  normal(): number;
}

/**
 * A stream from a seed, a whole number 0 to 2^32 − 1. Streams of different seeds are independent for our purposes.
 *   xoshiro128**, its state filled by a Weyl sequence through MurmurHash3's mixer (SplitMix in 32 bits); normals in
 *   pairs by Box and Muller
 * Every pair of normals takes the same count of draws, so a stream does not slip when one figure changes. The last bit
 * of a normal may differ between machines, with their logarithm and cosine. Not for secrets.
 * Throws RangeError for a seed that is no such number.
 * Source: D. Blackman, S. Vigna, Scrambled linear pseudorandom number generators, ACM Trans. Math. Softw. 47(4),
 * art. 36 (2021); seeding: G. Steele, D. Lea, C. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014.
 * Checked: checks/xoshiro128-generator.test.ts.
 */
export function seededRandom(seed: number): Random {
  if (seed >>> 0 !== seed)
    throw new RangeError(`seededRandom: seed ${seed}; a whole number from 0 to ${2 ** 32 - 1}`);
  const state = splitMix32(seed);
  let spare: number | null = null;
  const uniform = (): number => {
    const high = xoshiro128(state) >>> 5;
    const low = xoshiro128(state) >>> 6;
    return (high * 2 ** 26 + low) / 2 ** 53;
  };
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal };
}

/** Next 32 bits of xoshiro128**, as a whole number; advances the four words of `state`, which must not all be 0. */
export function xoshiro128(state: Uint32Array): number {
  const [s0, s1, s2, s3] = [state[0]!, state[1]!, state[2]!, state[3]!];
  const result = Math.imul(rotateLeft(Math.imul(s1, 5), 7), 9) >>> 0;
  const third = s2 ^ s0;
  const fourth = s3 ^ s1;
  state[1] = s1 ^ third;
  state[0] = s0 ^ fourth;
  state[2] = third ^ (s1 << 9);
  state[3] = rotateLeft(fourth, 11);
  return result;
}

/** Four words from one. They differ, since the mixing loses nothing, so at most one of them is 0. */
function splitMix32(seed: number): Uint32Array {
  const words = new Uint32Array(4);
  for (let i = 0; i < words.length; i += 1) {
    let z = (seed + Math.imul(0x9e3779b9, i + 1)) | 0;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    words[i] = z ^ (z >>> 16);
  }
  return words;
}

function rotateLeft(word: number, by: number): number {
  return (word << by) | (word >>> (32 - by));
}
