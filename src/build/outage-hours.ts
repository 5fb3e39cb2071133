/** Made-up net stored energy of a home with sun and an evening peak, kWh an hour; the same every time. */
export function outageHours(count: number, seed = 20261125): Float64Array {
  const random = seededRandom(seed);
  let clear = 0.5;
  return Float64Array.from({ length: count }, (_, t) => {
    const hour = t % 24;
    if (hour === 0) clear = 0.24 * clear + 0.76 * random();
    const summer = 0.7 - 0.3 * Math.cos((2 * Math.PI * (t % 8760)) / 8760);
    const sun = 5 * summer * clear * Math.max(0, Math.sin(((hour - 7) * Math.PI) / 10));
    const load = (hour >= 17 && hour < 22 ? 0.8 : 0.4) * (0.5 + random());
    const surplus = sun - load;
    return surplus > 0 ? 0.92 * surplus - 0.04 : surplus / 0.92 - 0.04;
  });
}

/** 32-bit linear congruence (Numerical Recipes): enough for made-up hours. */
function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
