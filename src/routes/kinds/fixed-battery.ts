import type { Home, Rank } from '../../home/home';
import { roofDoubt } from '../../home/roof';
import type { RouteKind } from '../../home/route-kind';
import type { World } from '../../home/world';
import { type Figure, figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import { formatQuantity } from '../../quantity/format-quantity';
import { batteryStepsKwh, powerSteps, solarStepsKw } from '../../tables/generic-steps';
import { goalHours, goalNet, hoursFrom, LIMIT_HOURS, sizeFor, usableOf } from '../battery-hours';
import { budgetUsd, part, total } from '../costs';
import { type Fitted, fitPower } from '../fit-power';
import { cannot, hoursRange, lasts, makeRoute } from '../make-route';
import { alwaysOff, loadsOf } from '../pick-loads';
import type { Lasting, Part, Route, SizeByOdds } from '../route';
import { batteryPlaceIfs, batteryPlaceStops, wiringIfs, wiringStops } from '../stops';
import { leaveOutTooMuch } from '../too-much-energy';

interface Sort {
  readonly kind: RouteKind;
  readonly title: string;
  readonly ranks: (home: Home) => Rank[];
  readonly solar: boolean;
}

const onCircuits: Sort = {
  kind: 'battery-circuits',
  title: 'Battery on chosen circuits',
  ranks: () => ['must'],
  solar: false,
};
const wholeHouse: Sort = {
  kind: 'battery-whole',
  title: 'Battery for the whole house, with load control',
  ranks: (home) =>
    home.facts.is('goal-scope', 'normal') ? ['must', 'good', 'wait'] : ['must', 'good'],
  solar: false,
};
const withSolar: Sort = {
  kind: 'battery-solar',
  title: 'Battery with roof solar',
  ranks: () => ['must'],
  solar: true,
};

export const batteryCircuits = (home: Home, world: World): Route => fixed(home, world, onCircuits);
export const batteryWhole = (home: Home, world: World): Route => fixed(home, world, wholeHouse);
export const batterySolar = (home: Home, world: World): Route => fixed(home, world, withSolar);

function fixed(home: Home, world: World, sort: Sort): Route {
  const stops = [
    ...wiringStops(home),
    ...batteryPlaceStops(home),
    ...(sort.solar ? roofStops(home, world) : []),
  ];
  if (stops.length > 0) return cannot(sort.kind, sort.title, stops);
  const wanted = leaveOutTooMuch(home, loadsOf(home, sort.ranks(home)), sort.solar);
  const found = fitPower({
    loads: wanted.loads,
    seasons: home.goalSeasons,
    steps: powerSteps('inverter'),
    startEnd: 'high',
    maySoftStart: true,
    sourceName: 'a home inverter',
  });
  if (found === null)
    return cannot(sort.kind, sort.title, ['no home inverter starts what must run']);
  const fitted = { ...found, leftOut: [...wanted.leftOut, ...found.leftOut] };
  return describe(home, sort, fitted, choose(home, world, sort, fitted));
}

function roofStops(home: Home, world: World): string[] {
  if (world.roof === null) {
    return home.facts.applies('roof-face')
      ? ['no roof with sun is known here; measure one first']
      : ['the roof is not yours to build on'];
  }
  const least = solarStepsKw()[0]!;
  return world.roof.roomKw < least
    ? [
        `the roof has room for about ${formatQuantity(world.roof.roomKw, 'kW')} of panels once paths for firefighters are left, too little to help`,
      ]
    : [];
}

interface Chosen {
  readonly nameplateKwh: number;
  readonly usableKwh: number;
  readonly solarKw: number;
  readonly size: SizeByOdds;
  readonly hours: { low: number; value: number; high: number };
  readonly reaches: boolean;
}

/**
 * The cheapest of the generic steps that carries 9 such outages in 10 (with life support: 9 winters in 10,
 * whenever it starts); where none does, what the budget buys, at least 10 kWh.
 */
function choose(home: Home, world: World, sort: Sort, fitted: Fitted): Chosen {
  const goal = goalHours(home, world, fitted.carried);
  const options = solarOptions(world, sort).map((solarKw) => {
    const nets = goal.map((hours) => ({
      pieces: hours.pieces,
      netKwh: goalNet(hours, fitted.step.watts / 1000, solarKw),
    }));
    const size = sizeFor(home, nets);
    const asked = home.lifeSupport === 'yes' ? size.nineYearsInTenKwh : size.nineOutagesInTenKwh;
    const nameplateKwh = batteryStepsKwh().find((kwh) => usableOf(home, kwh) >= asked) ?? null;
    return { solarKw, nets, size, nameplateKwh };
  });
  const price = (o: { nameplateKwh: number; solarKw: number }) =>
    total(partsOf(sort, fitted, o.nameplateKwh, o.solarKw)).value;
  const able = options.flatMap((o) =>
    o.nameplateKwh === null ? [] : [{ ...o, nameplateKwh: o.nameplateKwh }],
  );
  const best = able.sort((a, b) => price(a) - price(b))[0];
  const pick = best ?? {
    ...options.at(-1)!,
    nameplateKwh: withinBudget(home, sort, fitted, options.at(-1)!.solarKw),
  };
  const usableKwh = usableOf(home, pick.nameplateKwh);
  const { nets, ...rest } = pick;
  return {
    ...rest,
    usableKwh,
    hours: hoursFrom(nets, usableKwh),
    reaches: best !== undefined,
  };
}

/** No panels; or, with solar, up to four steps of the roof's room, the largest last. */
function solarOptions(world: World, sort: Sort): number[] {
  if (!sort.solar) return [0];
  const room = world.roof?.roomKw ?? 0;
  return solarStepsKw()
    .filter((kw) => kw <= room)
    .slice(-4);
}

/** The largest battery step that the later budget buys; 10 kWh when it buys less. */
function withinBudget(home: Home, sort: Sort, fitted: Fitted, solarKw: number): number {
  const budget = budgetUsd(home);
  const steps = batteryStepsKwh().filter((kwh) => kwh >= 10);
  const bought = steps.filter((kwh) => total(partsOf(sort, fitted, kwh, solarKw)).value <= budget);
  return bought.at(-1) ?? 10;
}

function partsOf(sort: Sort, fitted: Fitted, nameplateKwh: number, solarKw: number): Part[] {
  const inverter = formatQuantity(fitted.step.watts, 'W');
  const solar = solarKw > 0 ? [part('solar', solarKw * 1000, `Roof solar, ${solarKw} kW`)] : [];
  const wiring = sort.kind === 'battery-whole' ? part('load-control') : part('backup-subpanel');
  const soft = fitted.softStarter ? [part('soft-starter')] : [];
  const battery = sort.solar ? 'battery-with-solar' : 'battery';
  return [
    part(battery, nameplateKwh, `Battery, ${nameplateKwh} kWh, with an inverter of ${inverter}`),
    ...solar,
    wiring,
    ...soft,
    part('permit'),
  ];
}

function describe(home: Home, sort: Sort, fitted: Fitted, chosen: Chosen): Route {
  return makeRoute(sort.kind, sort.title, {
    ifs: [
      ...wiringIfs(home),
      ...batteryPlaceIfs(home),
      'the utility agrees before it is switched on',
      ...(sort.solar ? solarIfs(home) : []),
    ],
    carries: fitted.carried.map((load) => load.name),
    leavesOut: [...fitted.leftOut, ...alwaysOff(home)],
    power: {
      continuousWatts: fitted.step.watts,
      startVa: fitted.step.startVa,
      runningWatts: fitted.demand.runningWatts,
      startDemandVa: fitted.demand.startVa,
    },
    nameplateKwh: chosen.nameplateKwh,
    usableKwh: chosen.usableKwh,
    solarKw: chosen.solarKw > 0 ? chosen.solarKw : null,
    sizeByOdds: chosen.size,
    gap: 'from no blink to a few seconds, by itself',
    lasting: lastingOf(home, chosen),
    parts: partsOf(sort, fitted, chosen.nameplateKwh, chosen.solarKw),
    notes: notesOf(home, fitted, chosen),
  });
}

function solarIfs(home: Home): string[] {
  const doubt = roofDoubt(home.facts);
  const ifs = ['an installer checks the roof, its load and its shade'];
  return doubt === null ? ifs : [doubt, ...ifs];
}

function lastingOf(home: Home, chosen: Chosen): Lasting {
  const hours: Figure = figure({
    ...chosen.hours,
    unit: 'h',
    name: 'hours from a full battery',
    source: formula(
      'every hour of 100 drawn years as the start: reached by 9, by 5 and by 1 of 10',
      [],
      'weather drawn from TMY3 statistics (NREL/TP-581-43156)',
    ),
  });
  const goal = formatQuantity(home.goalHours.value, 'h');
  const long = chosen.hours.value >= LIMIT_HOURS ? 'two weeks or more' : hoursRange(hours);
  const says = chosen.reaches
    ? `A full battery lasts ${long}. It carries at least 9 in 10 outages of ${goal}.`
    : `A full battery lasts ${long}. It does not carry 9 in 10 outages of ${goal}: that would take about ${formatQuantity(chosen.size.nineOutagesInTenKwh, 'kWh')} of usable storage.`;
  return lasts(hours, chosen.reaches, says);
}

function notesOf(home: Home, fitted: Fitted, chosen: Chosen): string[] {
  const season = home.goalSeasons.length > 1 ? 'years' : `${home.goalSeasons[0]}s`;
  const notes = [
    `To carry 9 ${season} in 10, whenever in them the outage starts, takes about ${formatQuantity(chosen.size.nineYearsInTenKwh, 'kWh')} of usable storage.`,
    'Counted at five years old, when about a tenth has faded.',
  ];
  if (fitted.softStarter) notes.push('A soft starter on the compressor is counted in.');
  return notes;
}
