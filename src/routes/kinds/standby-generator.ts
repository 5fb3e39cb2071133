import type { Widths } from '../../home/answer-figure';
import { gasHere } from '../../home/heat/gas-here';
import type { Home, Rank } from '../../home/home';
import type { RouteTitle } from '../../kinds/route-title';
import type { GeneratorFuel } from '../../tables/fuels';
import { powerSteps } from '../../tables/generic-steps';
import { ruleIfs, ruleStops } from '../association';
import { part } from '../costs';
import { type Fitted, fitPower, powerOf } from '../fit-power';
import { fuelContainers, leansOnCans } from '../fuel/fuel-containers';
import { fromSameTank, sharedTankNotes } from '../fuel/propane-beside';
import { standbyGeneratorPart } from '../generator-part';
import { atSite, fuelAtHand, fuelHours, fuelUse, siteShare } from '../generator-size';
import { hungryShare } from '../hungry-share';
import { cannot, lasts, lastsHours, makeRoute } from '../make-route';
import { alwaysOff, loadsOf } from '../pick-loads';
import type { FuelUse, LeftOut, Part, Route } from '../route';
import type { If } from '../stops/condition';
import { gasStops, generatorStops, tankIfs, wiringIfs, wiringStops } from '../stops/stops';
import { type TransferTime, transferTime } from '../transfer-time';
import { fuelOfGas } from './generator-fuels';
import {
  type OwnStandby,
  ownStandby,
  ownStandbyIfs,
  ownStandbyParts,
  ownStandbyStops,
  ownStandbyTransfer,
} from './own-standby';
import { ALL_DAY, type Buying, hardestSeason } from './portable-generator';

/** A fixed generator outdoors with a transfer switch: theirs where it carries something, else one to buy. */
export function standbyGenerator(
  home: Home,
  widths: Widths,
  { mostWatts = Infinity, anew = false }: Buying = {},
): Route {
  const own = anew ? null : ownStandby(home);
  const theirs = own === null ? null : ownRoute(home, widths, own);
  return theirs ?? boughtRoute(home, widths, mostWatts);
}

/** On piped gas or a propane tank, with an automatic transfer switch. */
function boughtRoute(home: Home, widths: Widths, mostWatts: number): Route {
  const fuel = fuelOfGas[gasHere(home.facts)];
  const stops = [
    ...generatorStops(home),
    ...ruleStops(home),
    ...wiringStops(home),
    ...gasStops(home),
  ];
  const fitted = fitPower({
    loads: loadsOf(home, scopeOf(home)),
    seasons: home.goalSeasons,
    steps: atSite(
      home,
      powerSteps('standby').filter((step) => step.watts <= mostWatts),
    ),
    startEnd: 'value',
    maySoftStart: true,
    source: 'standby-generator',
  });
  if (stops.length > 0 || fuel === null || fitted === null) {
    return cannot(
      'standby-engine',
      stops.length > 0 ? stops : [{ code: 'standby-carries-nothing' }],
    );
  }
  const ratedWatts = fitted.step.watts / siteShare(home);
  return describe(home, widths, {
    called: 'standby-engine',
    fuel,
    fitted,
    leftOut: fitted.leftOut,
    ratedWatts,
    transferTime: transferTime('starts-itself'),
    ifs: ['gas-fitter-confirms', ...wiringIfs(home)],
    parts: [standbyGeneratorPart(ratedWatts), part('gas-line'), part('permit')],
  });
}

/** Null where it is too weak for anything that must run, so that one to buy is looked at. */
function ownRoute(home: Home, widths: Widths, own: OwnStandby): Route | null {
  const stops = [
    ...generatorStops(home),
    ...ruleStops(home),
    ...wiringStops(home),
    ...ownStandbyStops(home, own),
    ...(own.fuel === null ? [{ code: 'own-standby-fuel-unknown' } as const] : []),
  ];
  if (stops.length > 0) return cannot('own-standby', stops);
  const loads = loadsOf(home, scopeOf(home));
  const runs = loads.filter((load) => own.step.volts === 240 || load.volts === 120);
  const fitted = fitPower({
    loads: runs,
    seasons: home.goalSeasons,
    steps: [own.step],
    startEnd: 'value',
    maySoftStart: true,
    source: 'own-standby',
  });
  if (fitted === null) return null;
  const need240 = loads.filter((load) => !runs.includes(load));
  return describe(home, widths, {
    called: 'own-standby',
    fuel: own.fuel!,
    fitted,
    leftOut: [
      ...need240.map(
        (load): LeftOut => ({
          load: load.id,
          must: load.rank === 'must',
          why: { code: 'own-standby-120' },
        }),
      ),
      ...fitted.leftOut,
    ],
    ratedWatts: own.ratedWatts,
    transferTime: ownStandbyTransfer(own),
    ifs: ownStandbyIfs(home, own),
    parts: ownStandbyParts(own),
  });
}

function scopeOf(home: Home): Rank[] {
  return home.facts.is('goal-scope', 'normal') ? ['must', 'good', 'wait'] : ['must', 'good'];
}

interface Described {
  readonly called: RouteTitle;
  readonly fuel: GeneratorFuel;
  readonly fitted: Fitted;
  readonly leftOut: readonly LeftOut[];
  readonly ratedWatts: number;
  readonly transferTime: TransferTime;
  readonly ifs: readonly If[];
  readonly parts: readonly Part[];
}

function describe(home: Home, widths: Widths, it: Described): Route {
  const { fitted, ratedWatts } = it;
  const generator = { ratedKw: ratedWatts / 1000, siteKw: fitted.step.watts / 1000 };
  const season = hardestSeason(home, fitted);
  const burns = fuelUse({
    generator: 'standby',
    fuel: it.fuel,
    ...generator,
    wattsByHour: fitted.demand.wattsByHour[season],
    hungry: hungryShare(fitted.carried, season),
    atHand: fuelAtHand(home, widths, it.fuel),
    ...fromSameTank(home, it.fuel, fitted.carried),
  });
  const use = leansOnCans(home, burns);
  return makeRoute(it.called, {
    ifs: [
      'co-alarms',
      'exhaust-aimed',
      ...(it.fuel === 'propane' ? tankIfs(home) : []),
      ...ruleIfs(home),
      ...it.ifs,
    ],
    carries: fitted.carried.map((load) => load.id),
    leavesOut: [...it.leftOut, ...alwaysOff(home)],
    power: powerOf(fitted, ratedWatts),
    fuel: use,
    generator: { ...generator, runsByHour: ALL_DAY, type: 'standby' },
    transferTime: it.transferTime,
    lasting: lastingOf(home, use),
    parts: [
      ...it.parts,
      ...(fitted.softStarter ? [part('soft-starter')] : []),
      ...(it.fuel === 'propane' ? [] : fuelContainers(home, use)),
    ],
    notes: ['service-and-test-runs', ...sharedTankNotes(use)],
  });
}

function lastingOf(home: Home, use: FuelUse) {
  const hours = fuelHours(use);
  if (hours === null) {
    return lasts(null, true, { code: 'while-street-gas' });
  }
  return lastsHours(
    home,
    hours,
    use.fuel === 'propane'
      ? { code: 'propane-in-tank' }
      : { code: 'fuel', fuel: use.fuel, atHand: use.atHand!, inTank: false },
  );
}
