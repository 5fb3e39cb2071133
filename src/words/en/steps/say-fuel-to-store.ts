import type { FuelToStore } from '../../../plan/fuel/fuel-to-store';
import { formatQuantity } from '../../../quantity/format-quantity';
import { sayRouteTitle } from '../routes/route-titles';

/** Fuel still to be stored for the goal, and what holds it back. */
export function sayFuelToStore(of: FuelToStore): string {
  switch (of.code) {
    case 'store-all':
      return `Store ${more(of.moreGallons)}: ${need(of)}, and ${kept(of.keptGallons)}. ${limit(of)}.`;
    case 'store-to-limit':
      return toLimit(of);
    case 'fuller-tank':
      return `Have the propane tank kept fuller, or a larger one set: ${needPropane(of)}, and about ${Math.round(of.burnableGallons)} can be burned from what is in it. The dealer and a gas fitter decide.`;
    case 'cylinders':
      return `Store propane, outdoors only: ${needPropane(of)}, that is ${of.cylinders} cylinders of 20 pounds. Ask the fire department how many you may keep.`;
  }
}

type Of<Code> = Extract<FuelToStore, { code: Code }>;

function toLimit(of: Of<'store-to-limit'>): string {
  const { moreGallons, lasts, other } = of;
  const store = moreGallons > 0 ? `Store ${more(moreGallons)} and no more` : 'Store no more';
  const [likely, careful] = [lasts.value, lasts.low].map((h) => formatQuantity(Math.round(h), 'h'));
  const long = likely === careful ? likely : `${likely} (careful count ${careful})`;
  const elsewhere = other === null ? '' : `, or the ${sayRouteTitle(other).toLowerCase()}`;
  return `${store}: ${need(of)}, but ${limit(of)}; that lasts about ${long}. For the rest: a refill you can count on, fewer things switched on, a shorter goal${elsewhere}.`;
}

const running = ({ goalHours }: FuelToStore) => `${formatQuantity(goalHours, 'h')} of running`;

const need = (of: Of<'store-all' | 'store-to-limit'>) =>
  `${running(of)} takes about ${of.needGallons} gallons of ${of.fuel}${of.thirstyGallons === null ? '' : ` (${of.thirstyGallons} if the generator is thirsty)`}`;

const needPropane = (of: Of<'fuller-tank' | 'cylinders'>) =>
  `${running(of)} takes about ${of.needGallons} gallons of propane${of.houseBurnsToo ? ', with what the house burns from the same tank' : ''}`;

const limit = ({ limitGallons }: Of<'store-all' | 'store-to-limit'>) =>
  `${limitGallons} gallons is a usual limit of local fire code, and the fire department decides`;

const more = (gallons: number) => `${gallons} more ${gallons === 1 ? 'gallon' : 'gallons'}`;
const kept = (gallons: number) => (gallons > 0 ? `you keep ${gallons}` : 'none is kept now');
