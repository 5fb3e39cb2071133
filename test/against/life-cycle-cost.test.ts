// Discount factors and worked cases. Definitions: NIST Handbook 135 (1995), "Life-Cycle Costing Manual for the Federal
// Energy Management Program"; ASTM E917, E964, E1057, E1074, E1121. Factors to 5e-5 (printed to four digits), money
// to 0.01 dollars. The factor values were worked out apart from this program; UPV and SPV at 3 % and 12 and 20 years
// also agree with the printed tables of the handbook, as remembered (14.88, 0.701, 0.554).
import { describe, expect, test } from 'vitest';
import { netPresentValue, ratesOfReturn } from '../../src/bill/lifecycle/cash-flow';
import {
  capitalRecovery,
  escalatedPresentValue,
  realRate,
  singlePresentValue,
  uniformPresentValue,
} from '../../src/bill/lifecycle/factors';
import { levelizedStorageCost } from '../../src/bill/lifecycle/levelized-storage';
import {
  type LifeCycleInput,
  lifeCycleCost,
  savingsMeasures,
} from '../../src/bill/lifecycle/life-cycle-cost';
import { payback } from '../../src/bill/lifecycle/payback';

const within = (value: number, wanted: number, tolerance: number) =>
  expect(Math.abs(value - wanted), `${value} against ${wanted}`).toBeLessThanOrEqual(tolerance);

// rate %, years, SPV, UPV, UCR
const factors: [number, number, number, number, number][] = [
  [2, 1, 0.9804, 0.9804, 1.02],
  [2, 5, 0.9057, 4.7135, 0.21216],
  [2, 10, 0.8203, 8.9826, 0.11133],
  [2, 12, 0.7885, 10.5753, 0.09456],
  [2, 15, 0.743, 12.8493, 0.07783],
  [2, 20, 0.673, 16.3514, 0.06116],
  [2, 25, 0.6095, 19.5235, 0.05122],
  [2, 30, 0.5521, 22.3965, 0.04465],
  [3, 1, 0.9709, 0.9709, 1.03],
  [3, 5, 0.8626, 4.5797, 0.21835],
  [3, 10, 0.7441, 8.5302, 0.11723],
  [3, 12, 0.7014, 9.954, 0.10046],
  [3, 15, 0.6419, 11.9379, 0.08377],
  [3, 20, 0.5537, 14.8775, 0.06722],
  [3, 25, 0.4776, 17.4131, 0.05743],
  [3, 30, 0.412, 19.6004, 0.05102],
  [5, 1, 0.9524, 0.9524, 1.05],
  [5, 5, 0.7835, 4.3295, 0.23097],
  [5, 10, 0.6139, 7.7217, 0.1295],
  [5, 12, 0.5568, 8.8633, 0.11283],
  [5, 15, 0.481, 10.3797, 0.09634],
  [5, 20, 0.3769, 12.4622, 0.08024],
  [5, 25, 0.2953, 14.0939, 0.07095],
  [5, 30, 0.2314, 15.3725, 0.06505],
  [7, 1, 0.9346, 0.9346, 1.07],
  [7, 5, 0.713, 4.1002, 0.24389],
  [7, 10, 0.5083, 7.0236, 0.14238],
  [7, 12, 0.444, 7.9427, 0.1259],
  [7, 15, 0.3624, 9.1079, 0.10979],
  [7, 20, 0.2584, 10.594, 0.09439],
  [7, 25, 0.1842, 11.6536, 0.08581],
  [7, 30, 0.1314, 12.409, 0.08059],
];

test('32 rows of discount factors', () => {
  for (const [percent, years, spv, upv, ucr] of factors) {
    const at = { rate: percent / 100, years };
    within(singlePresentValue(at), spv, 5e-5);
    within(uniformPresentValue(at), upv, 5e-5);
    within(capitalRecovery(at), ucr, 5e-6);
  }
});

test('8 rows of escalated factors, the row with e = d among them', () => {
  const rows: [number, number, number, number][] = [
    [0.03, 0.01, 20, 16.3827],
    [0.03, 0.02, 20, 18.0812],
    [0.03, 0.03, 20, 20],
    [0.03, 0.04, 20, 22.1699],
    [0.03, -0.005, 20, 14.1898],
    [0.03, 0.005, 10, 8.7577],
    [0.05, 0.025, 15, 12.4371],
    [0.07, 0.03, 25, 15.8162],
  ];
  for (const [rate, escalation, years, wanted] of rows) {
    within(escalatedPresentValue({ rate, escalation, years }), wanted, 5e-5);
  }
});

test('rates with and without inflation', () => {
  within(realRate({ nominal: 0.056, inflation: 0.025 }), 0.030244, 5e-7);
  // 1.4634 %, not the 1.5 % of plain subtraction.
  within(realRate({ nominal: 0.04, inflation: 0.025 }), 0.014634, 5e-7);
});

test('examples of Newnan, Eschenbach & Lavelle, Engineering Economic Analysis, 14th ed. 2020', () => {
  within(30_000 * uniformPresentValue({ rate: 0.08, years: 30 }), 337_733.5, 0.01);
  within(200_000 * capitalRecovery({ rate: 0.08, years: 30 }), 17_765.49, 0.01);
  const everyThird = Array.from({ length: 51 }, (_, t) => (t > 0 && t % 3 === 0 ? 1000 : 0));
  within(netPresentValue(everyThird, 0.03), 8174.547, 0.001);
});

describe('office air-conditioning example of NIST Handbook 135 (inputs as remembered, arithmetic apart)', () => {
  const common = { years: 20, rate: 0.03, energyFactor: 15.13 };
  const conventional: LifeCycleInput = {
    ...common,
    investment: 103_000,
    replacements: [{ year: 12, cost: 12_000 }],
    residual: 3500,
    energyPerYear: 250_000 * 0.08,
    upkeepPerYear: 7000,
  };
  const saving: LifeCycleInput = {
    ...common,
    investment: 110_000,
    replacements: [{ year: 12, cost: 12_500 }],
    residual: 3700,
    energyPerYear: 162_500 * 0.08,
    upkeepPerYear: 8000,
  };

  test('life-cycle cost and its parts', () => {
    const base = lifeCycleCost(conventional);
    within(base.total, 516_221.02, 0.01);
    within(base.replacements, 8416.56, 0.01);
    within(base.residual, 1937.87, 0.01);
    within(base.energy, 302_600, 0.01);
    within(base.upkeep, 104_142.32, 0.01);
    const other = lifeCycleCost(saving);
    within(other.total, 432_428.45, 0.01);
    within(other.replacements, 8767.25, 0.01);
    within(other.residual, 2048.6, 0.01);
  });

  test('the same with no escalation and with 1 % a year', () => {
    const flat = { energyFactor: undefined };
    within(lifeCycleCost({ ...conventional, ...flat }).total, 511_170.51, 0.01);
    within(lifeCycleCost({ ...saving, ...flat }).total, 429_145.62, 0.01);
    const rising = { energyFactor: undefined, energyEscalation: 0.01 };
    within(lifeCycleCost({ ...conventional, ...rising }).total, 541_275.48, 0.01);
    within(lifeCycleCost({ ...saving, ...rising }).total, 448_713.85, 0.01);
  });

  test('net savings, savings-to-investment ratio and adjusted rate of return', () => {
    const found = savingsMeasures(lifeCycleCost(conventional), lifeCycleCost(saving), common);
    within(found.netSavings, 83_792.57, 0.01);
    within(found.ratio!, 12.5736, 5e-5);
    within(found.adjustedReturn!, 0.16899, 5e-6);
  });
});

describe('cash flows', () => {
  const time = (found: ReturnType<typeof payback>) =>
    found.kind === 'recovered' ? found.first : { wholeYear: Number.NaN, years: Number.NaN };

  test('-700, 100, 175, 250, 325 (a standard textbook case)', () => {
    const flow = [-700, 100, 175, 250, 325];
    within(ratesOfReturn(flow).rates[0]!, 0.069107, 5e-7);
    expect(time(payback(flow)).wholeYear).toBe(4);
    within(time(payback(flow)).years, 3.5385, 5e-5);
    within(time(payback(flow, 0.05)).years, 3.8605, 5e-5);
    within(netPresentValue(flow, 0.05), 37.306, 5e-5);
  });

  test('-12,000 then 1,500 for 12 years', () => {
    const flow = [-12_000, ...Array(12).fill(1500)];
    within(netPresentValue(flow, 0.05), 1294.8775, 5e-5);
    within(ratesOfReturn(flow).rates[0]!, 0.068653, 5e-7);
    expect(time(payback(flow))).toEqual({ wholeYear: 8, years: 8 });
    expect(time(payback(flow, 0.05)).wholeYear).toBe(11);
    within(time(payback(flow, 0.05)).years, 10.4759, 5e-5);
    expect(time(payback(flow, 0.03)).wholeYear).toBe(10);
    within(time(payback(flow, 0.03)).years, 9.2875, 5e-5);
  });

  test('solar and battery with fade, escalation, upkeep and a replacement in year 13 (invented)', () => {
    const flow = Array.from({ length: 26 }, (_, t) => {
      if (t === 0) return -36_000;
      const saved = 2600 * (1.025 * 0.995) ** (t - 1);
      return saved - 250 * 1.025 ** (t - 1) - (t === 13 ? 6000 : 0);
    });
    within(flow[1]!, 2350, 0.01);
    within(flow[2]!, 2395.42, 0.01);
    within(flow[13]!, -3043.64, 0.01);
    within(flow[25]!, 3717.47, 0.01);
    within(netPresentValue(flow, 0.05), 914.1386, 5e-5);
    within(netPresentValue(flow, 0), 32_606.53, 0.01);
    const { rates } = ratesOfReturn(flow);
    within(rates.at(-1)!, 0.052337, 5e-7);
    expect(time(payback(flow)).wholeYear).toBe(16);
    within(time(payback(flow)).years, 15.4985, 5e-5);
    within(time(payback(flow, 0.05)).years, 24.1673, 5e-5);
  });

  test('-1,000, 2,500, -1,540 has two rates of return', () => {
    const flow = [-1000, 2500, -1540];
    const found = ratesOfReturn(flow);
    expect(found.kind).toBe('several');
    within(found.rates[0]!, 0.1, 1e-9);
    within(found.rates[1]!, 0.4, 1e-9);
    within(netPresentValue(flow, 0.05), -15.873, 5e-5);
    within(netPresentValue(flow, 0.25), 14.4, 5e-5);
    within(netPresentValue(flow, 0.5), -17.7778, 5e-5);
    expect(payback(flow).kind).toBe('lost-again');
  });

  test('an engine that only costs has no rate of return and no payback', () => {
    const flow = [-4000, ...Array(15).fill(-180)];
    expect(ratesOfReturn(flow)).toEqual({ rates: [], signChanges: 0, kind: 'none' });
    expect(payback(flow)).toEqual({ kind: 'never' });
    const npv = netPresentValue(flow, 0.03);
    within(npv, -6148.8283, 5e-5);
    within(-npv * capitalRecovery({ rate: 0.03, years: 15 }), 515.07, 0.005);
  });
});

describe('levelized cost of storage (invented cases on the 12.5 kWh, 1,503 $/kWh benchmark of NREL Q1 2022)', () => {
  const l1 = {
    capital: 1503 * 12.5,
    usableKwh: 12.5,
    depth: 0.9,
    cyclesPerYear: 330,
    roundTripEfficiency: 0.85,
    fadePerYear: 0.02,
    upkeepPerYear: 0,
    chargePrice: 0.14,
    years: 15,
    rate: 0.05,
  };
  test('L1, and L1 charged for free', () => {
    within(levelizedStorageCost(l1)!, 0.7141, 5e-5);
    within(levelizedStorageCost({ ...l1, chargePrice: 0 })!, 0.5494, 5e-5);
  });
  test('L2, with 2.5 % of capital a year for upkeep', () => {
    within(levelizedStorageCost({ ...l1, upkeepPerYear: 0.025 * l1.capital })!, 0.8567, 5e-5);
  });
  test('L3, by hand', () => {
    const l3 = { ...l1, capital: 10_000, usableKwh: 10, depth: 1, cyclesPerYear: 365 };
    const plain = { ...l3, roundTripEfficiency: 0.9025, fadePerYear: 0, years: 10, rate: 0 };
    within(levelizedStorageCost(plain)!, 10_000 / 36_500 + 0.14 / 0.9025, 1e-9);
  });
  test('L4, used ten times a year only in outages, stored energy costs 17 dollars a kWh', () => {
    const l4 = { ...l1, cyclesPerYear: 10, fadePerYear: 0.01, chargePrice: 0.17 };
    within(levelizedStorageCost(l4)!, 17.2903, 5e-5);
  });
});

describe('check computations', () => {
  test('K11: to break even in 15 years, a delivered kWh must be worth 0.3612 dollars above its charging', () => {
    const worth = levelizedStorageCost({
      capital: 18_787.5,
      usableKwh: 9.5,
      depth: 1,
      cyclesPerYear: 365,
      roundTripEfficiency: 1,
      fadePerYear: 0,
      upkeepPerYear: 0,
      chargePrice: 0,
      years: 15,
      rate: 0,
    });
    within(worth!, 0.3612, 5e-5);
  });
  test('K10: shifting 10 kWh a day under tariff B does not pay back within 15 years', () => {
    const perDay = 9.5 * 0.36 - (10 / 0.95) * 0.15;
    within(perDay, 1.8411, 5e-5);
    const flow = [-18_787.5, ...Array(30).fill(365 * perDay)];
    within(time(payback(flow)), 27.96, 0.005);
    expect(payback(flow.slice(0, 16)).kind).toBe('never');
  });
  const time = (found: ReturnType<typeof payback>) =>
    found.kind === 'recovered' ? found.first.years : Number.NaN;
});
