import { goalShare } from '../../advice/ride/goal-share';
import { MEANS_EVERY_HOURS } from '../../advice/ride/sampled-starts';
import { mustWalkable } from '../../advice/ride/walkable';
import { walkedShare } from '../../advice/ride/walked-odds';
import type { Home, Season } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { traitsOf } from '../../kinds/route-traits';
import { figure } from '../../quantity/figure';
import { usableOf } from '../../routes/battery-hours';
import { part } from '../../routes/costs';
import { LOAD_SHARE } from '../../routes/fit-power';
import { cansGal } from '../../routes/fuel/fuel-containers';
import { gasolineLimitGal } from '../../routes/fuel/gasoline-limit';
import { onceStored } from '../../routes/fuel/once-stored';
import { portableGeneratorPart, standbyGeneratorPart } from '../../routes/generator-part';
import { atSite, siteShare } from '../../routes/generator-size';
import type { FuelUse, Route } from '../../routes/route';
import { fuelStorage } from '../../tables/fuel-storage';
import { batteryStepsKwh, type PowerStep, powerSteps } from '../../tables/generic-steps';
import { namedValue } from '../../tables/named-values';
import { inTheTank } from './in-the-tank';
import { priceOfExchange } from './price-of-exchange';
import type { Neighbor, NeighborStep } from './ride-through';
import { stepsBeside } from './steps-beside';

const CAN_GAL = namedValue(fuelStorage, 'gasoline-can-gal').value;

/** Beside a generator: a can of fuel less and more, a generator one step smaller and larger, and its battery's steps. */
export function generatorNeighbors(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): Neighbor[] {
  const goal = Math.round(home.goalHours.value);
  const shareOf = (other: Route) =>
    walkedShare(mustWalkable(home, drawn, other, season), goal, MEANS_EVERY_HOURS).share;
  const filled = onceStored(home, route)?.route.fuel ?? null;
  const withOdds = ({ step, other, ableTo }: Beside): Neighbor => ({
    step,
    nameplateKwh: other.nameplateKwh,
    solarKw: 0,
    odds: ableTo ? shareOf(other) : null,
    carefulOdds: ableTo ? goalShare(home, drawn, other, { season, careful: true }) : null,
    costUsd: other.costUsd,
    ...(ableTo &&
      filled !== null &&
      step.code !== 'fuel' && { oddsOnceStored: shareOf({ ...other, fuel: filled }) }),
  });
  return [
    ...fuelSteps(home, route),
    ...generatorSteps(home, route),
    ...batterySteps(home, route),
  ].map(withOdds);
}

interface Beside {
  readonly step: NeighborStep;
  readonly other: Route;
  /** It runs and starts what must run. */
  readonly ableTo: boolean;
}

/**
 * Gasoline by the can, and what there is once the cans among the parts are filled, never beyond what may usually be kept here;
 * propane as full or empty as the tank may be found.
 */
function fuelSteps(home: Home, route: Route): Beside[] {
  const { fuel } = route;
  if (fuel === null || fuel.atHand === null) return [];
  const { atHand } = fuel;
  const inCans = fuel.fuel === 'gasoline' || fuel.fuel === 'diesel';
  const amounts = inCans
    ? cansBeside(home, fuel, atHand.value)
    : [atHand.low, atHand.high].filter((gallons) => Math.abs(gallons - atHand.value) > 0.5);
  return amounts.map((gallons) => {
    return {
      step: {
        code: 'fuel',
        larger: gallons >= atHand.value,
        gallons: inTheTank(fuel, gallons),
        fuel: fuel.fuel,
      },
      other: {
        ...route,
        fuel: {
          ...fuel,
          atHand: figure({ ...atHand, value: gallons, low: gallons, high: gallons }),
        },
      },
      ableTo: true,
    };
  });
}

function cansBeside(home: Home, fuel: FuelUse, today: number): number[] {
  const kept = cansGal(home, fuel) ?? today;
  const most = Math.max(gasolineLimitGal(home), kept);
  const amounts = [today - CAN_GAL, today + CAN_GAL, kept];
  return [...new Set(amounts)]
    .filter((gallons) => gallons > 0 && gallons <= most && gallons !== today)
    .sort((a, b) => a - b);
}

/** Generators the household owns already have no steps beside them. */
function generatorSteps(home: Home, route: Route): Beside[] {
  const { generator, power } = route;
  const bought = route.parts.find((one) =>
    ['portable-engine', 'standby-engine'].includes(one.equipmentClass),
  );
  if (generator === null || power === null || bought === undefined || bought.costUsd.high === 0) {
    return [];
  }
  // Height, heat and fuel take from each size what they take from the one of the route.
  const share = generator.siteKw / generator.ratedKw;
  const inlet = traitsOf[route.kind].connection === 'inlet';
  const labels = powerSteps(generator.type === 'standby' ? 'standby' : 'engine').filter(
    (step) => !inlet || step.volts === 240,
  );
  return stepsBeside(labels, 1000 * generator.ratedKw, ({ watts }) => watts).map((label) => {
    const [site] = atSite(home, [label], share / siteShare(home));
    const ratedKw = label.watts / 1000;
    const makePart = generator.type === 'standby' ? standbyGeneratorPart : portableGeneratorPart;
    return {
      step: { code: 'generator', larger: ratedKw >= generator.ratedKw, kw: ratedKw },
      other: {
        ...route,
        generator: { ...generator, ratedKw, siteKw: ratedKw * share },
        costUsd: priceOfExchange(route, makePart(label.watts)),
      },
      ableTo: runs(route, site!),
    };
  });
}

/** Beside a battery the generator only charges; alone it must run and start everything, and is loaded as little as the one advised. */
export function runs(
  { power, usableKwh }: Pick<Route, 'power' | 'usableKwh'>,
  site: PowerStep,
): boolean {
  if (usableKwh !== null || power === null) return true;
  return (
    power.runningWatts.value <= LOAD_SHARE * site.watts && power.startDemandVa.value <= site.startVa
  );
}

function batterySteps(home: Home, route: Route): Beside[] {
  const { nameplateKwh, usableKwh } = route;
  const bought = route.parts.find((one) => one.equipmentClass === 'battery');
  // What they have has no steps beside it; with one bought beside theirs, theirs stays.
  if (nameplateKwh === null || bought === undefined || bought.costUsd.high === 0) return [];
  const theirsKwh = usableKwh! - usableOf(home, nameplateKwh);
  return stepsBeside(batteryStepsKwh(), nameplateKwh, (kwh) => kwh).map((kwh) => ({
    step: { code: 'battery', larger: kwh >= nameplateKwh, kwh },
    other: {
      ...route,
      nameplateKwh: kwh,
      usableKwh: theirsKwh + usableOf(home, kwh),
      costUsd: priceOfExchange(route, part('battery', kwh)),
    },
    ableTo: true,
  }));
}
