import type { Stores } from '../../quantity/counted';
import type { Route } from '../../routes/route';

/** What a route meets an outage with; its fuel with the cans filled where `storedGal` says so. */
export function storesOf(
  { usableKwh, solarKw, generator, fuel }: Route,
  { storedGal = null, careful = false }: { storedGal?: number | null; careful?: boolean } = {},
): Stores {
  const atHand = fuel?.atHand ?? null;
  const amount = storedGal ?? (careful ? atHand?.low : atHand?.value);
  return {
    usableKwh,
    solarKw,
    generatorKw: generator?.siteKw ?? null,
    fuel: fuel === null || amount === undefined ? null : { amount, unit: fuel.unit },
  };
}
