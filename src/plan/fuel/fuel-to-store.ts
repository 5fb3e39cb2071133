import type { Advice } from '../../advice/advice';
import type { Home } from '../../home/home';
import type { RouteTitle } from '../../kinds/route-title';
import { gallonsForGoal, keptGal } from '../../routes/fuel/fuel-containers';
import { gasolineLimitGal } from '../../routes/fuel/gasoline-limit';
import { onceStored } from '../../routes/fuel/once-stored';
import type { FuelUse, Lasting } from '../../routes/route';
import type { Who } from '../../rules/rule';
import { fuelStorage } from '../../tables/fuel-storage';
import type { GeneratorFuel } from '../../tables/fuels';
import { namedValue } from '../../tables/named-values';

/** Fuel still to be stored for the goal, and what holds it back. */
export type FuelToStore = (InCans | InTank | InCylinders) & {
  readonly who: Who;
  readonly goalHours: number;
  /** What the goal takes, whole gal. */
  readonly needGallons: number;
  /** Gallons to add to what is kept now, within the usual limit. */
  readonly moreGallons: number;
  /** With it the likely burn reaches the goal. */
  readonly reachesGoal: boolean;
  /** Hours with it at the likely burn; null where nobody can say before a dealer or fire department did. */
  readonly thenHours: number | null;
};

/** Gasoline or diesel: all of it, or no more than the usual limit of local fire code. */
type InCans = {
  readonly fuel: GeneratorFuel;
  /** The same by a thirsty generator, gal; null where that is no more. */
  readonly thirstyGallons: number | null;
  readonly keptGallons: number;
  readonly limitGallons: number;
} & (
  | { readonly code: 'store-all' }
  | {
      readonly code: 'store-to-limit';
      /** How long it lasts, filled as far as the limit goes. */
      readonly lasts: NonNullable<Lasting['hours']>;
      /** Another route that does the whole job. */
      readonly other: RouteTitle | null;
    }
);

/** Of what is in the tank so much can be burned, gal. */
interface InTank {
  readonly code: 'fuller-tank';
  readonly houseBurnsToo: boolean;
  readonly burnableGallons: number;
}

/** Propane with no tank: so many cylinders of 20 pounds. */
interface InCylinders {
  readonly code: 'cylinders';
  readonly houseBurnsToo: boolean;
  readonly cylinders: number;
}

/** What is missing between the fuel kept now and the goal, for the route advised; null when nothing is. */
export function fuelToStore(home: Home, advice: Advice): FuelToStore | null {
  const { fuel } = advice.route;
  if (fuel === null || fuel.atHand === null) return null;
  return fuel.fuel === 'propane' ? propane(home, fuel) : inCans(home, advice, fuel);
}

function inCans(home: Home, advice: Advice, fuel: FuelUse): FuelToStore | null {
  const keptGallons = keptGal(home, fuel.fuel);
  const needGallons = gallonsForGoal(home, fuel);
  if (keptGallons >= needGallons) return null;
  const limitGallons = gasolineLimitGal(home);
  const thirsty = Math.ceil((fuel.perDay.high * home.goalHours.value) / 24);
  const moreGallons = Math.max(0, Math.ceil(Math.min(needGallons, limitGallons) - keptGallons));
  const stored = onceStored(home, advice.route);
  const of = {
    fuel: fuel.fuel,
    goalHours: home.goalHours.value,
    needGallons,
    thirstyGallons: thirsty > needGallons ? thirsty : null,
    keptGallons,
    limitGallons,
    moreGallons,
  };
  if (needGallons <= limitGallons) {
    const thenHours = stored?.route.lasting.hours?.value ?? null;
    return { ...of, code: 'store-all', who: 'household', reachesGoal: true, thenHours };
  }
  const lasts = (stored ?? advice).route.lasting.hours!;
  return {
    ...of,
    code: 'store-to-limit',
    who: 'building or fire department',
    lasts,
    other: otherRoute(advice),
    reachesGoal: false,
    thenHours: moreGallons > 0 ? Math.round(lasts.value) : null,
  };
}

const otherRoute = ({ route, wholeJob }: Advice) =>
  wholeJob === null || wholeJob === route ? null : wholeJob.called;

function propane(home: Home, fuel: FuelUse): FuelToStore | null {
  const beside = fuel.besidePerDay?.value ?? 0;
  const needGallons = gallonsForGoal(home, fuel) + Math.ceil((beside * home.goalHours.value) / 24);
  const atHandGal = (fuel.tank ?? fuel.atHand!).value;
  if (atHandGal >= needGallons) return null;
  const of = {
    goalHours: home.goalHours.value,
    needGallons,
    moreGallons: Math.ceil(needGallons - atHandGal),
    houseBurnsToo: beside > 0,
    reachesGoal: false,
    thenHours: null,
  };
  if (atHandGal > 0)
    return { ...of, code: 'fuller-tank', who: 'gas fitter', burnableGallons: atHandGal };
  return {
    ...of,
    code: 'cylinders',
    who: 'building or fire department',
    cylinders: Math.ceil(needGallons / namedValue(fuelStorage, 'propane-cylinder-gal').value),
  };
}
