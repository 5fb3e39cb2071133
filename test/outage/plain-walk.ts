/** The slow and obvious way: step a store hour by hour round the ring of hours. */
export function plainWalk(
  net: ArrayLike<number>,
  start: number,
  hours: number,
  capKwh: number,
  startKwh: number,
): { endKwh: number; unservedKwh: number } {
  let endKwh = startKwh;
  let unservedKwh = 0;
  for (let k = 0; k < hours; k++) {
    const next = endKwh + net[(start + k) % net.length]!;
    unservedKwh += Math.max(0, -next);
    endKwh = Math.min(Math.max(next, 0), capKwh);
  }
  return { endKwh, unservedKwh };
}

/** Deepest fall of the running sum, by looking at every pair of hours' ends inside the window. */
export function plainDrawdown(net: ArrayLike<number>, start: number, hours: number): number {
  let peak = 0;
  let sum = 0;
  let deepest = 0;
  for (let k = 0; k < hours; k++) {
    sum += net[(start + k) % net.length]!;
    peak = Math.max(peak, sum);
    deepest = Math.max(deepest, peak - sum);
  }
  return deepest;
}

/** A plain seeded generator for made-up hours (Numerical Recipes' 32-bit linear congruence). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

/** Made-up net energy of a home with sun and an evening peak, kWh an hour inside the battery. */
export function madeUpHours(count: number, seed: number, sunKw: number, loadKw: number) {
  const random = seeded(seed);
  let clear = 0.5;
  return Float64Array.from({ length: count }, (_, t) => {
    const hour = t % 24;
    if (hour === 0) clear = 0.3 * clear + 0.7 * random();
    const day = Math.max(0, Math.sin(((hour - 7) * Math.PI) / 10));
    const evening = hour >= 17 && hour < 22 ? 2 : 1;
    return sunKw * clear * day - loadKw * evening * (0.5 + random());
  });
}
