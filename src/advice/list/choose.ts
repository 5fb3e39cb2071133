import { neverLessened } from '../../home/loads/never-lessened';
import { givesPower } from './candidate';
import { isEnough } from './enough';
import type { Weighed } from './unbeaten';
import { compareValues, type Value } from './value';

/** The one to advise of the unbeaten, within the money told; null where it buys none of them, or none worth its price. */
export function chooseOf(all: readonly Weighed[], budgetUsd: number | null): Weighed | null {
  const payable = all.filter(({ usd }) => budgetUsd === null || usd <= budgetUsd);
  const enough = payable.find(isEnough);
  if (enough !== undefined) return withItsCans(asUsualIfAsGood(enough, payable), payable);
  const best = payable.reduce<Weighed | null>(
    (a, b) => (a === null || compareValues(b.value, a.value) >= 0 ? b : a),
    null,
  );
  if (best === null || isAsGoodAsNone(best)) return null;
  return withItsCans(payable.find(({ value }) => isNear(value, best.value))!, payable);
}

/** A tenth of the job or less, %, is about as good as none of it. Our judgement. */
const HARDLY = 10;

/** No money is spent on that; but an hour's bridge for health or a dry house is something. */
const isAsGoodAsNone = (one: Weighed): boolean => {
  const { devices, odds, long, share } = one.value;
  const guards = one.living.home.loads.some(
    (load) => neverLessened(load) && one.counted.carries.includes(load.id),
  );
  return one.usd > 0 && devices === null && !guards && odds <= NEAR && !long && share <= HARDLY;
};

/** Outages in a hundred that are no difference between two ways of living. Our judgement. */
export const ALIKE = 1;

/**
 * What is enough only thriftily gives way to the cheapest that is enough as usual, where the money buys it with odds as good. What needs
 * no power at all gives way to nothing: a battery for what a match or a lantern does is not worth its price.
 */
function asUsualIfAsGood(enough: Weighed, payable: readonly Weighed[]): Weighed {
  if (enough.living.way === 'usual' || !givesPower(enough)) return enough;
  const usual = payable.find((one) => one.living.way === 'usual' && isEnough(one));
  return usual !== undefined && usual.value.odds >= enough.value.odds - ALIKE ? usual : enough;
}

/** Cans cost little beside the generator they feed: with them, where they make it better. */
function withItsCans(one: Weighed, payable: readonly Weighed[]): Weighed {
  const sibling = payable.find(
    (other) =>
      other !== one &&
      other.usd > one.usd &&
      one.sized.route.fuel?.noMoreThanGal !== undefined &&
      other.counted.kind === one.counted.kind &&
      other.counted.generator?.ratedKw === one.counted.generator?.ratedKw &&
      other.counted.nameplateKwh === one.counted.nameplateKwh &&
      other.living === one.living,
  );
  return sibling ?? one;
}

/** So many outages in a hundred, or so much of the job, are not worth the next larger thing. Our judgement. */
export const NEAR = 5;

/**
 * Where none is enough, the cheapest that comes about as near as the best that can be paid. More money never makes
 * it worse, for the best only gets better.
 */
function isNear(value: Value, best: Value): boolean {
  return (
    (best.devices ?? 0) - (value.devices ?? 0) <= NEAR &&
    best.odds - value.odds <= NEAR &&
    best.share - value.share <= NEAR &&
    (!best.long || value.long)
  );
}
