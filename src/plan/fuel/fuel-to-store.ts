import type { Advice } from '../../advice/advice';
import type { Home } from '../../home/home';
import { formatQuantity } from '../../quantity/format-quantity';
import { gallonsForGoal, keptGal } from '../../routes/fuel-containers';
import { gasolineLimitGal } from '../../routes/gasoline-limit';
import { onceStored } from '../../routes/once-stored';
import type { FuelUse } from '../../routes/route';
import type { Who } from '../../rules/rule';
import { fuelStorage } from '../../tables/fuel-storage';
import { namedValue } from '../../tables/named-values';

/** Fuel still to be stored for the goal, and what holds it back. */
export interface FuelToStore {
  readonly says: string;
  readonly who: Who;
  /** Gallons to add to what is kept now, within the usual limit. */
  readonly moreGallons: number;
  /** With it the likely burn reaches the goal. */
  readonly reachesGoal: boolean;
  /** Hours with it at the likely burn; null where nobody can say before a dealer or fire department did. */
  readonly thenHours: number | null;
}

/** What is missing between the fuel kept now and the goal, for the route advised; null when nothing is. */
export function fuelToStore(home: Home, advice: Advice): FuelToStore | null {
  const { fuel } = advice.route;
  if (fuel === null || fuel.atHand === null) return null;
  if (fuel.fuel === 'propane') return propane(home, fuel);
  const keptNow = keptGal(home, fuel.fuel);
  const wholeGal = gallonsForGoal(home, fuel);
  if (keptNow >= wholeGal) return null;
  const limitGal = gasolineLimitGal(home);
  const goal = formatQuantity(home.goalHours.value, 'h');
  const most = Math.ceil((fuel.perDay.high * home.goalHours.value) / 24);
  const need = `${goal} of running takes about ${wholeGal} gallons of ${fuel.fuel}${most > wholeGal ? ` (${most} if the generator is thirsty)` : ''}`;
  const limit = `${limitGal} gallons is a usual limit of local fire code, and the fire department decides`;
  const within = Math.max(0, Math.ceil(Math.min(wholeGal, limitGal) - keptNow));
  if (wholeGal <= limitGal) {
    const says = `Store ${count(within)}: ${need}, and ${kept(keptNow)}. ${limit}.`;
    const thenHours = onceStored(home, advice.route)?.route.lasting.hours?.value ?? null;
    return { says, who: 'household', moreGallons: within, reachesGoal: true, thenHours };
  }
  const store = within > 0 ? `Store ${count(within)} and no more` : 'Store no more';
  const lasting = (onceStored(home, advice.route) ?? advice).route.lasting.hours!;
  const thenHours = Math.round(lasting.value);
  const [likely, careful] = [lasting.value, lasting.low].map((h) =>
    formatQuantity(Math.round(h), 'h'),
  );
  const lasts = likely === careful ? likely : `${likely} (careful count ${careful})`;
  const says = `${store}: ${need}, but ${limit}; that lasts about ${lasts}. For the rest: ${otherWays(advice)}.`;
  const who = 'building or fire department';
  return {
    says,
    who,
    moreGallons: within,
    reachesGoal: false,
    thenHours: within > 0 ? thenHours : null,
  };
}

const count = (gallons: number) => `${gallons} more ${gallons === 1 ? 'gallon' : 'gallons'}`;
const kept = (gallons: number) => (gallons > 0 ? `you keep ${gallons}` : 'none is kept now');

function otherWays({ route, wholeJob }: Advice): string {
  const other =
    wholeJob === null || wholeJob === route ? '' : `, or the ${wholeJob.title.toLowerCase()}`;
  return `a refill you can count on, fewer things switched on, a shorter goal${other}`;
}

function propane(home: Home, fuel: FuelUse): FuelToStore | null {
  const beside = fuel.besidePerDay?.value ?? 0;
  const needGal = gallonsForGoal(home, fuel) + Math.ceil((beside * home.goalHours.value) / 24);
  const atHandGal = (fuel.tank ?? fuel.atHand!).value;
  if (atHandGal >= needGal) return null;
  const goal = formatQuantity(home.goalHours.value, 'h');
  const moreGallons = Math.ceil(needGal - atHandGal);
  const house = beside > 0 ? ', with what the house burns from the same tank' : '';
  const need = `${goal} of running takes about ${needGal} gallons of propane${house}`;
  if (atHandGal > 0) {
    return {
      says: `Have the propane tank kept fuller, or a larger one set: ${need}, and about ${Math.round(atHandGal)} can be burned from what is in it. The dealer and a gas fitter decide.`,
      who: 'gas fitter',
      moreGallons,
      reachesGoal: false,
      thenHours: null,
    };
  }
  const cylinders = Math.ceil(needGal / namedValue(fuelStorage, 'propane-cylinder-gal').value);
  return {
    says: `Store propane, outdoors only: ${need}, that is ${cylinders} cylinders of 20 pounds. Ask the fire department how many you may keep.`,
    who: 'building or fire department',
    moreGallons,
    reachesGoal: false,
    thenHours: null,
  };
}
