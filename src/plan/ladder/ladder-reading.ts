import { gasHere } from '../../home/heat/gas-here';
import { keptGal } from '../../routes/fuel/fuel-containers';
import { PROPANE_USABLE } from '../../routes/generator-size';
import type { Plan } from '../plan';

/** What is read off to know that a rung is reached. */
export type Reading =
  /** The display of a battery, %. */
  | { readonly of: 'charge'; readonly percent: number }
  /** The fuel gauge of a vehicle, in parts of what it showed, %. */
  | { readonly of: 'vehicle'; readonly percent: number }
  /** Gallons left in cans or cylinders. */
  | { readonly of: 'cans'; readonly gallons: number; readonly fuel: string }
  /** Gallons left in the house tank: its size times its gauge. */
  | { readonly of: 'tank'; readonly gallons: number }
  /** Piped gas has nothing to read. */
  | { readonly of: 'strain' };

type Of = Pick<Plan, 'home' | 'fuelToStore'> & { readonly advice: Pick<Plan['advice'], 'route'> };

/**
 * Where a rung stands on the device. A battery goes before its generator, as in the walk; of fuel it is what is there
 * when the outage begins, with what is still to be stored.
 * @param percent what is left of the store, 0 to 100
 */
export function readingOf({ home, fuelToStore, advice: { route } }: Of, percent: number): Reading {
  const { usableKwh, fuel } = route;
  if (usableKwh !== null) return { of: 'charge', percent };
  if (fuel === null) return { of: 'vehicle', percent };
  if (fuel.atHand === null) return { of: 'strain' };
  const share = percent / 100;
  if (fuel.fuel === 'propane' && gasHere(home.facts) === 'tank') {
    const usable = (fuel.tank ?? fuel.atHand).value;
    const contents = usable / PROPANE_USABLE.likely;
    return { of: 'tank', gallons: Math.ceil(contents - (1 - share) * usable) };
  }
  const atStart =
    fuelToStore === null ? fuel.atHand.value : keptGal(home, fuel.fuel) + fuelToStore.moreGallons;
  return { of: 'cans', gallons: Math.ceil(share * atStart), fuel: fuel.fuel };
}
