import { hasGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { equipmentCost } from '../../tables/prices/equipment-costs';

/**
 * Of two routes of the same price and worth, below 0 where `a` goes first: what burns no fuel (safety), what needs nobody
 * at home, what is quiet, what carries more, what lives longer, what costs less to keep.
 */
export function tieBreak(a: Route, b: Route): number {
  const [x, y] = [pleasOf(a), pleasOf(b)];
  const at = x.findIndex((plea, i) => plea !== y[i]);
  return at < 0 ? 0 : x[at]! - y[at]!;
}

/** Each smaller is better. What burns fuel is also what is heard, so noise is settled with safety. */
function pleasOf(route: Route): number[] {
  const traits = traitsOf[route.kind];
  return [
    Number(hasGenerator(traits)),
    Number(traits.byHand),
    -route.carries.length,
    -lifeYears(route),
    upkeepUsd(route),
  ];
}

/** Life of what wears out first, of the parts that make up most of the price; a route that costs nothing: none. */
function lifeYears({ parts }: Route): number {
  const lives = parts
    .filter(({ costUsd }) => costUsd.value > 0)
    .sort((a, b) => b.costUsd.value - a.costUsd.value)
    .slice(0, 1)
    .map(({ equipmentClass }) => equipmentCost(equipmentClass).lifeLikely);
  return lives[0] ?? 0;
}

function upkeepUsd({ parts }: Route): number {
  return parts.reduce(
    (sum, { equipmentClass, units }) => sum + units * equipmentCost(equipmentClass).upkeepLikely,
    0,
  );
}
