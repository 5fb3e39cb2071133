import type { CautionFact, LoadFact, PlanFacts } from './plan-facts';

/** What of a plan is laid side by side, in the order in which it is read. */
export const ASPECTS = [
  'route',
  'price',
  'hours',
  'devices',
  'odds',
  'refill',
  'leaves-out',
] as const;
export type Aspect = (typeof ASPECTS)[number];

/** What differs between two plans of one home, in codes and figures. */
export interface PlanChanges {
  readonly before: PlanFacts;
  readonly after: PlanFacts;
  /** Aspects that both have or one has, each with whether it differs as it is printed. */
  readonly aspects: readonly { readonly code: Aspect; readonly changed: boolean }[];
  /** What must run and is left out only now, and what was. */
  readonly nowLeftOut: readonly LoadFact[];
  readonly nowCarried: readonly LoadFact[];
  /** The gravest first. */
  readonly cautionsCome: readonly CautionFact[];
  readonly cautionsGo: readonly CautionFact[];
  /** Nothing of all this differs. */
  readonly nothing: boolean;
}

/** Lays two plans of one home side by side. A figure differs where it would be printed otherwise. */
export function changesBetween(before: PlanFacts, after: PlanFacts): PlanChanges {
  const aspects = ASPECTS.filter((code) => has(before, code) || has(after, code)).map((code) => ({
    code,
    changed:
      JSON.stringify(shown(before, code)) !== JSON.stringify(shown(after, code)) ||
      (code === 'route' &&
        (differ(before.route, after.route, 'called') ||
          differ(before.route, after.route, 'thriftily'))),
  }));
  const cautionsCome = without(after.cautions, before.cautions);
  const cautionsGo = without(before.cautions, after.cautions);
  return {
    before,
    after,
    aspects,
    nowLeftOut: loadsWithout(after.leavesOut, before.leavesOut),
    nowCarried: loadsWithout(before.leavesOut, after.leavesOut),
    cautionsCome,
    cautionsGo,
    nothing:
      aspects.every(({ changed }) => !changed) && cautionsCome.length + cautionsGo.length === 0,
  };
}

function has(facts: PlanFacts, code: Aspect): boolean {
  if (code === 'odds') return facts.odds !== null;
  if (code === 'devices') return facts.devices !== null;
  return code !== 'refill' || facts.refill !== null;
}

/** What a plan file of an earlier form does not tell differs from nothing. */
const differ = (
  before: PlanFacts['route'],
  after: PlanFacts['route'],
  what: 'called' | 'thriftily',
) => before[what] !== null && after[what] !== null && before[what] !== after[what];

/** What of an aspect is printed, rounded no finer than it is printed. */
function shown(facts: PlanFacts, code: Aspect): unknown {
  const { route, size, usd, lasts, odds, refill, devices } = facts;
  switch (code) {
    case 'route':
      return [facts.undecided, facts.onlyBridge, route.kind, Object.values(size).map(fourDigits)];
    case 'price':
      return [usd.low, usd.likely, usd.high].map(Math.round);
    case 'hours':
      return [facts.goalHours, facts.reachesGoal, lasts.code, hoursShown(facts)];
    case 'devices':
      return typeof devices === 'object' && devices !== null
        ? [devices.likelyHours, devices.carefulHours].map(Math.round)
        : devices;
    case 'odds':
      return (
        odds && [
          facts.leavesOut.length > 0,
          facts.goalHours,
          facts.season,
          percent(odds.today),
          percent(odds.stored),
        ]
      );
    case 'refill':
      return refill && [refill.everyDays, percent(refill.share)];
    case 'leaves-out':
      return facts.leavesOut.map(({ id }) => id).sort();
  }
}

function hoursShown({ lasts }: PlanFacts): unknown {
  if (lasts.code !== 'hours') return null;
  const { today, stored } = lasts;
  const whole = (given: { low: number; likely: number }) =>
    [given.low, given.likely].map(Math.round);
  return [whole(today), stored && [fourDigits(stored.gallons), whole(stored.hours)]];
}

/** Plan files keep four digits of a number and three of a share. */
const fourDigits = (value: number | null) => (value === null ? null : Number(value.toPrecision(3)));
const percent = (share: number | null) => (share === null ? null : Math.round(100 * share));

function without(some: readonly CautionFact[], others: readonly CautionFact[]): CautionFact[] {
  const known = new Set(others.map(({ id }) => id));
  return some.filter(({ id }) => !known.has(id)).sort((a, b) => b.severity - a.severity);
}

function loadsWithout(some: readonly LoadFact[], others: readonly LoadFact[]): LoadFact[] {
  return some.filter((one) => !others.some(({ id }) => id === one.id));
}
