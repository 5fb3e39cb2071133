import type { FuelToStore } from '../../../plan/fuel/fuel-to-store';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { sayRouteTitle } from '../routes/route-titles';

/** Fuel still to be stored for the goal, and what holds it back. */
export function sayFuelToStore(fuelToStore: FuelToStore): string {
  switch (fuelToStore.code) {
    case 'store-all':
      return `Store ${more(fuelToStore.moreGallons)}: ${need(fuelToStore)}, and ${kept(fuelToStore.keptGallons)}. ${limit(fuelToStore)}.`;
    case 'store-to-limit':
      return toLimit(fuelToStore);
    case 'fuller-tank':
      return `Have the propane tank kept fuller, or a larger one set: ${needPropane(fuelToStore)}, and about ${Math.round(fuelToStore.burnableGallons)} can be burned from what is in it. The dealer and a gas fitter decide.`;
    case 'cylinders':
      return `Store propane, outdoors only: ${needPropane(fuelToStore)}, that is ${fuelToStore.cylinders} cylinders of 20 pounds. Ask the fire department how many you may keep.`;
  }
}

type Of<Code> = Extract<FuelToStore, { code: Code }>;

function toLimit(given: Of<'store-to-limit'>): string {
  const { moreGallons, lasts, other } = given;
  const store = moreGallons > 0 ? `Store ${more(moreGallons)} and no more` : 'Store no more';
  const [likely, careful] = [lasts.value, lasts.low].map((h) => shown(h, 'h'));
  const long = likely === careful ? likely : `${likely} (careful count ${careful})`;
  const elsewhere = other === null ? '' : `, or the ${sayRouteTitle(other).toLowerCase()}`;
  return `${store}: ${need(given)}, but ${limit(given)}; that lasts about ${long}. For the rest: a refill you can count on, fewer things switched on, a shorter goal${elsewhere}.`;
}

const running = ({ goalHours }: FuelToStore) => `${formatQuantity(goalHours, 'h')} of running`;

const need = (given: Of<'store-all' | 'store-to-limit'>) =>
  `${running(given)} takes about ${given.needGallons} gallons of ${given.fuel}${given.thirstyGallons === null ? '' : ` (${given.thirstyGallons} if the generator is thirsty)`}`;

const needPropane = (given: Of<'fuller-tank' | 'cylinders'>) =>
  `${running(given)} takes about ${given.needGallons} gallons of propane${given.houseBurnsToo ? ', with what the house burns from the same tank' : ''}`;

const limit = ({ limitGallons }: Of<'store-all' | 'store-to-limit'>) =>
  `${limitGallons} gallons is a usual limit of local fire code, and the fire department decides`;

const more = (gallons: number) => `${gallons} more ${gallons === 1 ? 'gallon' : 'gallons'}`;
const kept = (gallons: number) => (gallons > 0 ? `you keep ${gallons}` : 'none is kept now');
