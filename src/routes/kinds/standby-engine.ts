import type { Widths } from '../../home/answer-figure';
import { type GasHere, gasHere } from '../../home/gas-here';
import type { Home, Rank } from '../../home/home';
import type { EngineFuel } from '../../tables/fuels';
import { powerSteps } from '../../tables/generic-steps';
import { ruleIfs, ruleStops } from '../association';
import { part } from '../costs';
import { standbyEnginePart } from '../engine-part';
import { atSite, fuelAtHand, fuelHours, fuelUse, siteShare } from '../engine-size';
import { fitPower } from '../fit-power';
import { hungryShare } from '../hungry-share';
import { cannot, lasts, lastsHours, makeRoute } from '../make-route';
import { alwaysOff, loadsOf } from '../pick-loads';
import { fromSameTank, sharedTankNotes } from '../propane-beside';
import type { Route } from '../route';
import { engineStops, gasStops, tankIfs, wiringIfs, wiringStops } from '../stops';
import { ALL_DAY, hardestSeason } from './portable-engine';

const title = 'Standby generator that starts by itself';

/** A fixed engine outdoors on piped gas or a propane tank, with an automatic transfer switch. */
export function standbyEngine(home: Home, widths: Widths): Route {
  const fuel = fuels[gasHere(home.facts)];
  const stops = [...engineStops(home), ...ruleStops(home), ...wiringStops(home), ...gasStops(home)];
  const scope: Rank[] = home.facts.is('goal-scope', 'normal')
    ? ['must', 'good', 'wait']
    : ['must', 'good'];
  const fitted = fitPower({
    loads: loadsOf(home, scope),
    seasons: home.goalSeasons,
    steps: atSite(home, powerSteps('standby')),
    startEnd: 'value',
    maySoftStart: true,
    sourceName: 'a standby generator of this class',
  });
  if (stops.length > 0 || fuel === null || fitted === null) {
    return cannot(
      'standby-engine',
      title,
      stops.length > 0 ? stops : ['it carries none of what must run'],
    );
  }
  const ratedWatts = fitted.step.watts / siteShare(home);
  const engine = { ratedKw: ratedWatts / 1000, siteKw: fitted.step.watts / 1000 };
  const season = hardestSeason(home, fitted);
  const use = fuelUse({
    engine: 'standby',
    fuel,
    ...engine,
    wattsByHour: fitted.demand.wattsByHour[season],
    hungry: hungryShare(fitted.carried, season),
    atHand: fuelAtHand(home, widths, fuel),
    ...fromSameTank(home, fuel, fitted.carried),
  });
  const hours = fuelHours(use);
  return makeRoute('standby-engine', title, {
    ifs: [
      'battery carbon monoxide alarms hang on each floor and by the bedrooms before it first runs',
      'a gas fitter and the gas company confirm that meter, pipe and regulator can feed it',
      'the exhaust can be aimed away from every opening, as far off as the site allows',
      ...(fuel === 'propane' ? tankIfs(home) : []),
      ...ruleIfs(home),
      ...wiringIfs(home),
    ],
    carries: fitted.carried.map((load) => load.name),
    leavesOut: [...fitted.leftOut, ...alwaysOff(home)],
    power: {
      continuousWatts: ratedWatts,
      startVa: fitted.step.startVa,
      runningWatts: fitted.demand.runningWatts,
      startDemandVa: fitted.demand.startVa,
    },
    fuel: use,
    engine: { ...engine, runsByHour: ALL_DAY, sort: 'standby' },
    gap: '10 to 30 seconds, by itself',
    lasting:
      hours === null
        ? lasts(
            null,
            true,
            'It runs as long as the gas in the street does; that can fail in an earthquake or deep cold.',
          )
        : lastsHours(home, hours, 'The propane in the tank'),
    parts: [
      standbyEnginePart(ratedWatts),
      part('gas-line'),
      ...(fitted.softStarter ? [part('soft-starter')] : []),
      part('permit'),
    ],
    notes: [
      'It needs service every year and a test run under load every month.',
      ...sharedTankNotes(use),
    ],
  });
}

const fuels: Readonly<Record<GasHere, EngineFuel | null>> = {
  street: 'natural-gas',
  tank: 'propane',
  some: null,
  none: null,
  unknown: null,
};
