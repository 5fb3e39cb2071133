import { neverLessened } from '../../home/loads/never-lessened';
import { givesPower } from './candidate';
import { addedGuardsUsd, type DeviceShare, earnsItsPrice } from './earns-its-price';
import { isEnough } from './enough';
import { NEAR } from './near';
import type { Weighed } from './unbeaten';
import { compareValues } from './value';

/**
 * The one to advise of the unbeaten, within the money told; null where it buys none of them, or none worth its price.
 * @param all cheapest first
 */
export function chooseOf(
  all: readonly Weighed[],
  budgetUsd: number | null,
  devices: DeviceShare,
): Weighed | null {
  const payable = all.filter(({ usd }) => budgetUsd === null || usd <= budgetUsd);
  const enough = payable.find(isEnough);
  if (enough !== undefined) return withItsCans(asUsualIfAsGood(enough, payable), payable);
  const earned = bestOf(payable, (b, a) => earnsItsPrice(b, a, devices));
  const best = earned === null || isAsGoodAsNone(earned) ? bestOf(payable, () => true) : earned;
  if (best === null || isAsGoodAsNone(best)) return null;
  return withItsCans(payable.find((one) => isNear(one, best))!, payable);
}

/**
 * Where none is enough: the one within the money that does the most, where what it adds to the one advised is not worth its price; null
 * where that one comes about as near.
 */
export function tooDear(
  all: readonly Weighed[],
  budgetUsd: number | null,
  chosen: Weighed | null,
): Weighed | null {
  if (chosen === null || isEnough(chosen)) return null;
  const payable = all.filter(({ usd }) => budgetUsd === null || usd <= budgetUsd);
  const most = bestOf(payable, () => true);
  return most === null || most.usd <= chosen.usd || isNear(chosen, most) ? null : most;
}

/** From the cheapest on, whatever is worth as much or more and is worth its price: with more money the same steps, and then more. */
function bestOf(
  payable: readonly Weighed[],
  isWorthIt: (dearer: Weighed, cheaper: Weighed) => boolean,
): Weighed | null {
  return payable.reduce<Weighed | null>(
    (a, b) => (a === null || (compareValues(b.value, a.value) >= 0 && isWorthIt(b, a)) ? b : a),
    null,
  );
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

/**
 * Where none is enough, the cheapest that comes about as near as the best that is worth its price, and leaves out nothing that alone is
 * worth the difference. More money never makes it worse, for the best only gets better.
 */
function isNear(one: Weighed, best: Weighed): boolean {
  const { devices, odds, share, long } = one.value;
  return (
    (best.value.devices ?? 0) - (devices ?? 0) <= NEAR &&
    best.value.odds - odds <= NEAR &&
    best.value.share - share <= NEAR &&
    (!best.value.long || long) &&
    addedGuardsUsd(best, one) <= best.usd - one.usd
  );
}
