import type { Facts } from '../facts';

/**
 * The gas of this house: `street` or `tank` as told, `some` where something burns gas and nobody said where it comes
 * from, `none` where that was told, `unknown` where nothing was. No street brings gas to a home that no power company reaches: there only
 * a tank could, and nobody told of one.
 */
export type GasHere = 'street' | 'tank' | 'some' | 'none' | 'unknown' | 'no-tank-known';

/** What was told goes before what is not known: a house that heats with gas has gas. */
export function gasHere(facts: Facts): GasHere {
  if (facts.told('gas-supply')) {
    if (facts.is('gas-supply', 'town-gas')) return 'street';
    return facts.is('gas-supply', 'propane-tank') ? 'tank' : 'none';
  }
  if (facts.told('engine-fuel') && facts.is('engine-fuel', 'natural-gas')) return 'street';
  if (isFarOff(facts)) return 'no-tank-known';
  return burnsGas(facts) ? 'some' : 'unknown';
}

const isFarOff = (facts: Facts) => facts.told('home-kind') && facts.is('home-kind', 'off-grid');

/** Told of a heater, water heater or stove of its own that burns gas from a pipe or a tank. */
export function burnsGas(facts: Facts): boolean {
  return (
    (facts.told('heat-main') && facts.is('heat-main', 'gas-furnace', 'gas-no-power')) ||
    (facts.told('water-heater') && facts.is('water-heater', 'gas-pilot', 'tankless-gas')) ||
    (facts.told('cook-main') && facts.is('cook-main', 'gas'))
  );
}
