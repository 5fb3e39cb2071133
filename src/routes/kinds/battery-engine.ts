import type { Widths } from '../../home/answer-figure';
import type { Home } from '../../home/home';
import type { World } from '../../home/world';
import { figure } from '../../quantity/figure';
import { batteryStepsKwh, powerSteps } from '../../tables/generic-steps';
import { ruleIfs, ruleStops } from '../association';
import { limitsOf, usableOf } from '../battery-hours';
import { part } from '../costs';
import { fuelAtHand, fuelHours, fuelUse } from '../engine-size';
import { fitPower } from '../fit-power';
import { fuelContainers } from '../fuel-containers';
import { cannot, lasts, lastsHours, makeRoute } from '../make-route';
import { alwaysOff, loadsOf } from '../pick-loads';
import { fromSameTank, sharedTankNotes } from '../propane-beside';
import type { Route } from '../route';
import {
  batteryPlaceIfs,
  batteryPlaceStops,
  engineStops,
  fuelIfs,
  handStops,
  wiringIfs,
  wiringStops,
} from '../stops';
import { CHARGE_EFFICIENCY, CHARGE_LOAD, chargingEngine } from './charging-engine';
import { hardestSeason } from './portable-engine';

const title = 'Battery for the nights, portable engine to refill it';

/** Hours of a night the battery carries alone. */
const NIGHT_HOURS = 14;
/** The timetable leaves room for days harder than the hard day. Our judgement. */
const COLDER_DAYS = 1.3;
/** A larger battery is not planned here: where a night asks more, the engine runs in the night too. */
const LARGEST_KWH = 20;

/** A battery that carries the night; an engine run well loaded for some hours a day fills it again. */
export function batteryEngine(home: Home, _world: World, widths: Widths): Route {
  const stops = [
    ...engineStops(home),
    ...ruleStops(home),
    ...handStops(home),
    ...wiringStops(home),
    ...batteryPlaceStops(home),
  ];
  if (stops.length > 0) return cannot('battery-engine', title, stops);
  const fitted = fitPower({
    loads: loadsOf(home, ['must']),
    seasons: home.goalSeasons,
    steps: powerSteps('inverter'),
    startEnd: 'high',
    maySoftStart: true,
    sourceName: 'a home inverter',
  });
  if (fitted === null)
    return cannot('battery-engine', title, ['no home inverter starts what must run']);
  const season = hardestSeason(home, fitted);
  const kwhPerDay = fitted.demand.kwhPerDay[season].value;
  const nightKwh = (kwhPerDay * NIGHT_HOURS) / 24 / limitsOf(1).dischargeEfficiency;
  const steps = batteryStepsKwh().filter((kwh) => kwh <= LARGEST_KWH);
  const nameplateKwh = steps.find((kwh) => usableOf(home, kwh) >= nightKwh) ?? steps.at(-1)!;
  const charging = chargingEngine(home, { inverterWatts: fitted.step.watts, kwhPerDay });
  const engine = charging.size;
  const runHours = Math.min(
    24,
    Math.ceil((COLDER_DAYS * kwhPerDay) / CHARGE_EFFICIENCY / (engine.siteKw * CHARGE_LOAD)),
  );
  const runsByHour = timetable(runHours, usableOf(home, nameplateKwh) >= nightKwh);
  const fuelKind = charging.fuel;
  const fuel = fuelUse({
    engine: charging.sort,
    fuel: fuelKind,
    ...engine,
    wattsByHour: runsByHour.map((runs) => runs * engine.siteKw * CHARGE_LOAD * 1000),
    runsByHour,
    atHand: fuelAtHand(home, widths, fuelKind),
    ...fromSameTank(home, fuelKind, fitted.carried),
  });
  const hours = fuelHours(fuel);
  const bridge =
    (usableOf(home, nameplateKwh) / Math.max(kwhPerDay, 0.1)) *
    24 *
    limitsOf(1).dischargeEfficiency;
  return makeRoute('battery-engine', title, {
    ifs: [
      'battery carbon monoxide alarms hang on each floor and by the bedrooms before the engine first runs',
      'the charger is set to what the engine can give, and the maker allows this engine on it',
      ...fuelIfs(home, fuelKind),
      ...ruleIfs(home),
      ...wiringIfs(home),
      ...batteryPlaceIfs(home),
    ],
    carries: fitted.carried.map((load) => load.name),
    leavesOut: [...fitted.leftOut, ...alwaysOff(home)],
    power: {
      continuousWatts: fitted.step.watts,
      startVa: fitted.step.startVa,
      runningWatts: fitted.demand.runningWatts,
      startDemandVa: fitted.demand.startVa,
    },
    nameplateKwh,
    usableKwh: usableOf(home, nameplateKwh),
    fuel,
    engine: { ...engine, runsByHour, sort: charging.sort },
    gap: 'from no blink to a few seconds, by itself; the engine is started by hand later',
    lasting:
      hours === null
        ? lasts(null, true, 'It goes on while fuel can be had.')
        : lastsHours(
            home,
            figure({
              ...hours,
              value: hours.value + bridge,
              low: hours.low + bridge,
              high: hours.high + bridge,
            }),
            'The battery and the fuel at hand together',
          ),
    parts: [
      part('battery', nameplateKwh, `Battery, ${nameplateKwh} kWh, with an inverter`),
      charging.part,
      part('backup-subpanel'),
      part('inlet-interlock', 1, 'Inlet for the engine to the charger'),
      ...(fitted.softStarter ? [part('soft-starter')] : []),
      part('permit'),
      ...fuelContainers(home, fuel),
    ],
    notes: [
      usableOf(home, nameplateKwh) >= nightKwh
        ? `The engine runs about ${runHours} hours a day, well loaded, and the nights are quiet.`
        : `The engine runs about ${runHours} hours a day, on hard nights too: the battery holds less than a hard night.`,
      ...sharedTankNotes(fuel),
    ],
  });
}

/** Hours of the day in running order: from 7 in the morning and from 16 on, so that the nights stay quiet. */
const QUIET_NIGHTS = [
  7, 16, 8, 17, 9, 18, 10, 19, 11, 20, 12, 15, 13, 14, 21, 6, 22, 5, 23, 4, 0, 3, 1, 2,
];

/** 1 in the hours in which the engine runs; where the battery does not hold a night, spread over day and night. */
function timetable(hoursPerDay: number, holdsNight: boolean): number[] {
  const spread = Array.from({ length: hoursPerDay }, (_, i) => Math.floor((i * 24) / hoursPerDay));
  const runs = new Set(holdsNight ? QUIET_NIGHTS.slice(0, hoursPerDay) : spread);
  return Array.from({ length: 24 }, (_, hour) => (runs.has(hour) ? 1 : 0));
}
