import type { PlanFacts } from '../../../src/plan/changes/plan-facts';

/** Facts of a plan made up for a test, some of them changed. */
export const madeUp = (changed: Partial<PlanFacts> = {}): PlanFacts => ({
  drawnYears: 100,
  undecided: false,
  route: {
    kind: 'power-pack',
    called: 'power-pack',
    title: null,
    isSource: true,
    thriftily: false,
  },
  size: { usableKwh: 1.8, watts: null, solarKw: null, step: 0 },
  usd: { low: 900, likely: 1200, high: 1500 },
  goalHours: 24,
  season: 'winter',
  lasts: {
    code: 'hours',
    today: { low: 14, likely: 20, high: 26 },
    stored: null,
    overDrawnYears: true,
  },
  reachesGoal: false,
  odds: { today: 0.42, stored: null },
  devices: null,
  onlyBridge: false,
  refill: null,
  leavesOut: [],
  cautions: [
    { id: 'co-signs', severity: 5, careful: false },
    { id: 'cold-battery', severity: 3, careful: false },
  ],
  ...changed,
});
