// Random dispatch problems with a fixed seed (mulberry32), none of them from a real house.
import type { DispatchProblem } from '../bill/dispatch-problem';

/** A generator of numbers from 0 to 1 that always gives the same ones for the same seed. */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

export type PriceSort = 'ordinary' | 'dear-export' | 'negative';

/** A problem of some hours with random load, sun, prices, battery and permissions. */
export function randomProblem(
  random: () => number,
  { hours, prices }: { hours: number; prices: PriceSort },
): DispatchProblem {
  const list = (of: (h: number) => number) => Float64Array.from({ length: hours }, (_, h) => of(h));
  const loadKwh = list(() => 0.3 + 2.5 * random());
  const sun = random() < 0.25 ? 0 : 5 * random();
  const solarKwh = list(
    (h) => sun * Math.max(0, Math.sin(((h % 24) - 6) * (Math.PI / 12))) * random(),
  );
  const steps = [0.08, 0.15, 0.22, 0.36, 0.58].map((p) => p * (0.5 + random()));
  const importPrice = list(() => {
    const price = steps[Math.floor(random() * steps.length)]!;
    return prices === 'negative' && random() < 0.2 ? -price / 2 : price;
  });
  const exportPrice = list((h) => {
    if (prices === 'dear-export' && random() < 0.2) return importPrice[h]! * (1 + random());
    return Math.min(importPrice[h]!, 0.3 * random());
  });
  const usableKwh = 2 + 14 * random();
  const floor = usableKwh * 0.4 * random();
  const power = 0.5 + 6 * random();
  return {
    battery: {
      usableKwh,
      chargeKw: power,
      dischargeKw: power * (0.6 + 0.6 * random()),
      chargeEfficiency: 0.85 + 0.15 * random(),
      dischargeEfficiency: 0.85 + 0.15 * random(),
      wearPerKwh: random() < 0.5 ? 0 : 0.05 * random(),
    },
    loadKwh,
    solarKwh,
    importPrice,
    exportPrice,
    exportAllowed: random() < 0.7,
    batteryMayExport: random() < 0.6,
    gridMayCharge: random() < 0.7,
    floorKwh: new Float64Array(hours + 1).fill(floor),
  };
}
