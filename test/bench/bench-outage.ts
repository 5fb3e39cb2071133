import { ChargePass } from '../../src/outage/charge-pass';
import { DrawdownPass } from '../../src/outage/drawdown-pass';
import { hoursSurvived } from '../../src/outage/hours-survived';
import { NeedTally } from '../../src/outage/need-tally';
import { WHOLE_YEAR } from '../../src/outage/season';
import { sampleOutages } from '../../src/outage/walk/sampled-odds';
import { outageHours } from '../fixtures/outage-hours';

const HOURS = 876_000;
const WEEK = 168;
const CAP_KWH = 12;

/** Lines that say how fast outages from every start hour are weighed, each against a plain sum of the same array. */
export function benchOutage(runs = 15): string[] {
  const grown = growth();
  const net = outageHours(HOURS);
  const out = new Float64Array(HOURS);
  const lost = new Float64Array(HOURS);
  const drawdown = (hours: number) => () => new DrawdownPass(hours).push(net, out);
  const charge = (hours: number) => () => new ChargePass(hours, CAP_KWH).push(net, out, lost);
  const [sum, need, needTwo, state, stateTwo, survive] = inTurn(runs, [
    () => plainSum(net),
    drawdown(WEEK),
    drawdown(2 * WEEK),
    charge(WEEK),
    charge(2 * WEEK),
    () => hoursSurvived({ netKwh: net, capKwh: CAP_KWH, limitHours: 2 * WEEK }, out),
  ]) as [number, number, number, number, number, number];
  const [walk] = inTurn(runs, [() => walkEachWindow(net, WEEK, lost)]) as [number];
  const against = (ms: number) => `${(ms / sum).toFixed(1)} sums (${ms.toFixed(1)} ms)`;
  return [
    `Outages from ${HOURS.toLocaleString('en-US')} start hours; one plain sum takes ${sum.toFixed(2)} ms:`,
    `  storage needed, 7 days: ${against(need)}; at most 35`,
    `  charge needed, 7 days: ${against(state)}; at most 35`,
    `  hours survived, up to 14 days: ${against(survive)}`,
    `  walking each 7-day window: ${against(walk)}, ${(walk / state).toFixed(0)} times the charge pass; at least 10`,
    `  14 days over 7 days: storage ${(needTwo / need).toFixed(2)}, charge ${(stateTwo / state).toFixed(2)}; at most 1.3`,
    ...grown,
    walks(),
  ];
}

/** Least time of each task, ms, after warm-up, the tasks taken in turn. */
function inTurn(runs: number, tasks: readonly (() => unknown)[]): number[] {
  for (const task of tasks) for (let i = 0; i < 3; i++) task();
  const least = tasks.map(() => Infinity);
  for (let run = 0; run < runs; run++) {
    tasks.forEach((task, i) => {
      const before = performance.now();
      task();
      least[i] = Math.min(least[i]!, performance.now() - before);
    });
  }
  return least;
}

function plainSum(net: Float64Array): number {
  let sum = 0;
  for (let t = 0; t < net.length; t++) sum += net[t]!;
  return sum;
}

/** The slow way round: step a full store through every window to its end. */
function walkEachWindow(net: Float64Array, hours: number, out: Float64Array): void {
  for (let start = 0; start + hours <= net.length; start++) {
    let store = CAP_KWH;
    let missing = 0;
    for (let t = start; t < start + hours; t++) {
      store += net[t]!;
      if (store < 0) {
        missing -= store;
        store = 0;
      } else if (store > CAP_KWH) store = CAP_KWH;
    }
    out[start] = missing;
  }
}

/** Time and memory of sizing for 7 days from a record fed a year at a time, as the years go from 20 to 200. */
function growth(): string[] {
  const year = outageHours(8760);
  return [20, 50, 100, 200].map((years) => {
    let tally: NeedTally | null = null;
    const [ms] = inTurn(5, [
      () => {
        tally = new NeedTally({ outageHours: WEEK });
        for (let y = 0; y < years; y++) tally.addYear(year);
        tally.finish();
      },
    ]) as [number];
    globalThis.gc?.();
    const { heapUsed, arrayBuffers } = process.memoryUsage();
    const mb = ((heapUsed + arrayBuffers) / 2 ** 20).toFixed(1);
    const size = (tally as NeedTally | null)?.sizeForShareOfOutages(WHOLE_YEAR, 0.9);
    return `  ${years} years fed year by year: ${ms.toFixed(1)} ms, ${(ms / years).toFixed(3)} ms a year, ${mb} MB in use (${size?.toFixed(2)} kWh)`;
  });
}

/** One system with generator, vehicle and ladder, walked 14 days from a start every 37 hours of 100 years. */
function walks(): string {
  const net = outageHours(HOURS);
  const record = {
    loadsKw: [net.map((kwh) => Math.max(0, -kwh)), new Float64Array(HOURS).fill(0.2)],
    solarKw: net.map((kwh) => Math.max(0, kwh)),
  };
  const always = new Uint8Array(24).fill(1);
  const system = {
    battery: {
      capKwh: CAP_KWH,
      limits: {
        chargeKw: 5,
        dischargeKw: 5,
        chargeEfficiency: 0.92,
        dischargeEfficiency: 0.92,
        idleKw: 0.04,
      },
    },
    generator: {
      ratedKw: 4,
      fuelLine: { noLoadPerHour: 0.25, perKwh: 0.11 },
      runsByHour: always.map((_, h) => (h >= 6 && h < 9 ? 1 : 0)),
      fuelAtStart: 10,
      refill: 5,
      refillEveryHours: 72,
      tankSize: 10,
    },
    vehicle: {
      storeKwh: 30,
      outKw: 1.8,
      efficiency: 0.85,
      idleKw: 0.015,
      homeByHour: always,
      helpBelow: 0.5,
    },
    ladder: [{ load: 1, offBelow: 0.4 }],
  };
  const before = performance.now();
  const odds = sampleOutages({ system, record, startKwh: CAP_KWH, untilFailure: true });
  const ms = performance.now() - before;
  return `  ${odds[0]!.all!.sampled.toLocaleString('en-US')} walks of up to 14 days with engine, vehicle and ladder, to the first failure: ${ms.toFixed(0)} ms`;
}
