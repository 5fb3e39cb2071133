import type { Widths } from '../../home/answer-figure';
import type { Home } from '../../home/home';
import { healthHangs } from '../../home/people/health-devices';
import { ownSolarKw } from '../../home/solar/own-solar';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import { operand, timesFigure } from '../../quantity/figure-arithmetic';
import { ruleIfs, ruleStops } from '../association';
import { limitsOf, longestCounted } from '../battery-hours';
import { part } from '../costs';
import { type Fitted, powerOf } from '../fit-power';
import { fuelContainers, leansOnCans } from '../fuel/fuel-containers';
import { fromSameTank, sharedTankNotes } from '../fuel/propane-beside';
import { fuelAtHand, fuelUse } from '../generator-size';
import { hungryShare } from '../hungry-share';
import { cannot, lasts, lastsHours, makeRoute } from '../make-route';
import { ownPanelIfs, ownPanelParts } from '../own-panels';
import { alwaysOff } from '../pick-loads';
import type { FuelUse, Lasting, Route } from '../route';
import {
  batteryPlaceIfs,
  batteryPlaceStops,
  fuelIfs,
  generatorStops,
  handStops,
  wiringIfs,
  wiringStops,
} from '../stops/stops';
import { sunOfMiddleDayKwh } from '../sun-of-a-day';
import { transferTime } from '../transfer-time';
import { CHARGE_LOAD } from '../walk-generator';
import { walkedHours } from '../walked-hours';
import { CHARGE_EFFICIENCY, chargingGenerator } from './charging-generator';
import { chargingHours, longestRest, MOST_CHARGING_HOURS } from './charging-hours';
import { nightBattery } from './night-battery';
import { hardestSeason } from './portable-generator';

/** The timetable leaves room for days harder than the hard day. Our judgement. */
const COLDER_DAYS = 1.3;
/** A battery that carries the night; a generator run well loaded for some hours a day fills it again. */
export function batteryGenerator(
  home: Home,
  drawn: SyntheticYears,
  widths: Widths,
  onlyKwh: number | null = null,
): Route {
  const stops = [
    ...generatorStops(home),
    ...ruleStops(home),
    ...handStops(home),
    ...wiringStops(home),
    ...batteryPlaceStops(home),
  ];
  if (stops.length > 0) return cannot('battery-engine', stops);
  const battery = nightBattery(home, (fitted) => sizedDayKwh(home, fitted), onlyKwh);
  if (battery === null) return cannot('battery-engine', [{ code: 'no-inverter-starts-it' }]);
  const { fitted, nameplateKwh, usableKwh } = battery;
  const season = hardestSeason(home, fitted);
  const kwhPerDay = hardDayKwh(home, fitted);
  const sizedKwhPerDay = sizedDayKwh(home, fitted);
  const hungry = hungryShare(fitted.carried, season);
  const solarKw = ownSolarKw(home.facts);
  const charging = chargingGenerator(home, {
    inverterWatts: fitted.step.watts,
    kwhPerDay: sizedKwhPerDay,
  });
  const generator = charging.size;
  const runHours = runHoursFor(sizedKwhPerDay, generator.siteKw);
  const likelyRuns = chargingHours(runHoursFor(kwhPerDay, generator.siteKw));
  const runsByHour = chargingHours(runHours);
  const restHours = longestRest(runsByHour);
  const restKwh = (sizedKwhPerDay * restHours) / 24 / limitsOf(1).dischargeEfficiency;
  const holdsNight = usableKwh >= restKwh;
  const fuelKind = charging.fuel;
  const burns = (share: number) =>
    fuelUse({
      generator: charging.type,
      fuel: fuelKind,
      ...generator,
      wattsByHour: likelyRuns.map((runs) => runs * generator.siteKw * CHARGE_LOAD * 1000 * share),
      runsByHour: likelyRuns,
      atHand: fuelAtHand(home, widths, fuelKind),
      ...fromSameTank(home, fuelKind, fitted.carried),
    });
  // The sun of a middle day spares fuel; by the careful count it shines on none.
  const sunKwh = CHARGE_EFFICIENCY * sunOfMiddleDayKwh(drawn, season, solarKw);
  const likely = burns(Math.max(0, 1 - sunKwh / Math.max(kwhPerDay, 0.1)));
  // Hungry use asks for more hours of the same well-loaded running.
  const without = burns(1).perDay;
  const perDay = figure({
    ...likely.perDay,
    high: without.high * hungry,
    as: () => likely.perDay,
    endAs: (end) =>
      end === 'low'
        ? atEnd(likely.perDay, 'low')
        : timesFigure(atEnd(without, 'high'), operand(hungry, 'count', 'hungry-times'), {
            unit: without.unit,
          }),
  });
  const fuel = leansOnCans(home, { ...likely, perDay });
  const size = { ...generator, runsByHour, type: charging.type };
  const power = powerOf(fitted);
  const sun = solarKw > 0 ? solarKw : null;
  const walked = {
    kind: 'battery-engine',
    generator: size,
    fuel,
    usableKwh,
    way: home.way,
  } as const;
  const hours = walkedHours(home, drawn, { ...walked, power, solarKw: sun }, fitted.carried);
  return makeRoute('battery-engine', {
    ifs: [
      'co-alarms-for-the-generator',
      'charger-set',
      ...fuelIfs(home, fuelKind),
      ...ruleIfs(home),
      ...wiringIfs(home),
      ...batteryPlaceIfs(home),
      ...battery.ifs,
      ...ownPanelIfs(home),
    ],
    carries: fitted.carried.map((load) => load.id),
    leavesOut: [...fitted.leftOut, ...alwaysOff(home)],
    power,
    nameplateKwh,
    usableKwh,
    solarKw: sun,
    fuel,
    generator: size,
    transferTime: transferTime('by-itself-then-generator'),
    lasting: holdsNight ? lastingOf(home, fuel, hours) : darkNights(home, hours, restHours),
    parts: [
      ...battery.parts,
      charging.part,
      ...ownPanelParts(home),
      part('inlet-interlock', 1, { code: 'inlet-to-charger' }),
      ...(fitted.softStarter ? [part('soft-starter')] : []),
      part('permit'),
      ...fuelContainers(home, fuel),
    ],
    notes: [
      { code: 'runs-in-blocks', hours: runHours },
      ...(sunKwh > 0 ? [{ code: 'panels-spare-fuel', kwh: sunKwh, season } as const] : []),
      ...sharedTankNotes(fuel),
    ],
  });
}

const hardDayKwh = (home: Home, fitted: Fitted): number =>
  fitted.demand.kwhPerDay[hardestSeason(home, fitted)].value;

/** Sizes go by the hungry day where health hangs on power; what is likely to burn does not. */
function sizedDayKwh(home: Home, fitted: Fitted): number {
  const hungry = hungryShare(fitted.carried, hardestSeason(home, fitted));
  return hardDayKwh(home, fitted) * (healthHangs(home) ? hungry : 1);
}

/** Hours a day that refill so many kWh, with room for harder days. */
function runHoursFor(kwhPerDay: number, siteKw: number): number {
  const asked = (COLDER_DAYS * kwhPerDay) / CHARGE_EFFICIENCY / (siteKw * CHARGE_LOAD);
  return Math.min(MOST_CHARGING_HOURS, Math.ceil(asked));
}

/** The fuel at hand and the battery, as they run down together. */
function lastingOf(home: Home, { atHand }: FuelUse, hours: Figure): Lasting {
  return atHand === null && hours.low >= longestCounted(home)
    ? lasts(null, true, { code: 'while-fuel' })
    : lastsHours(home, hours, { code: 'battery-and-fuel' });
}

/** A battery that is empty before the morning carries no night, however much fuel there is. */
function darkNights(home: Home, hours: Figure, restHours: number): Lasting {
  return lasts(hours, false, {
    code: 'dark-nights',
    restHours,
    goalHours: home.goalHours.value,
  });
}
