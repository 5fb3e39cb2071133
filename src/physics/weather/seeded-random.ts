/** A stream of random numbers that is the same for the same seed on every machine. */
export interface SeededRandom {
  /** Even between 0 and 1, both excluded. */
  uniform(): number;
  /** From the normal law with mean 0 and standard deviation 1. */
  normal(): number;
}

/**
 * A seeded generator, 128 bits of state, for synthetic weather; not for secrets. `seed` is any
 * integer. Method: xoshiro128** 1.1 (Blackman & Vigna 2021, ACM Trans. Math. Softw. 47(4)), its state
 * filled by a 32-bit mixing counter; normal numbers by the polar method (Marsaglia & Bray 1964).
 */
export function seededRandom(seed: number): SeededRandom {
  if (!Number.isSafeInteger(seed)) throw new RangeError(`seed must be a whole number, not ${seed}`);
  const next = xoshiro(mixedState(seed));
  const uniform = () => (next() + 0.5) / 4_294_967_296;
  let spare: number | null = null;
  const normal = () => {
    if (spare !== null) {
      const value = spare;
      spare = null;
      return value;
    }
    for (;;) {
      const x = 2 * uniform() - 1;
      const y = 2 * uniform() - 1;
      const s = x * x + y * y;
      if (s >= 1) continue;
      const scale = Math.sqrt((-2 * Math.log(s)) / s);
      spare = y * scale;
      return x * scale;
    }
  };
  return { uniform, normal };
}

function mixedState(seed: number): [number, number, number, number] {
  let counter = (seed ^ Math.floor(seed / 4_294_967_296)) | 0;
  const word = () => {
    counter = (counter + 0x9e3779b9) | 0;
    let z = counter;
    z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
    z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
    return z ^ (z >>> 16);
  };
  return [word(), word(), word(), word()];
}

function xoshiro([a, b, c, d]: [number, number, number, number]): () => number {
  const turn = (x: number, k: number) => (x << k) | (x >>> (32 - k));
  return () => {
    const result = Math.imul(turn(Math.imul(b, 5), 7), 9) >>> 0;
    const t = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= t;
    d = turn(d, 11);
    return result;
  };
}
