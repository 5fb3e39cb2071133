import type { Widths } from '../../home/answer-figure';
import { demandOf } from '../../home/demand';
import type { Home, Load } from '../../home/home';
import { figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import { part } from '../costs';
import { cannot, lastsHours, makeRoute } from '../make-route';
import { alwaysOff, loadsOf, splitPlugIn } from '../pick-loads';
import type { LeftOut, Route } from '../route';
import { engineStops, plugIfs } from '../stops';
import { packHours } from './packs';

const title = 'Vehicle with an outlet, on cords';

/** What stays in the battery to reach the place you would go to. Common practice, no source. */
const KEPT_TO_DRIVE = 0.4;

/** A vehicle that has outlets, feeding what plugs in by cord. Anything but a battery-only vehicle is an engine. */
export function vehicle(home: Home, _widths: Widths): Route {
  const { facts } = home;
  if (!facts.has('own-sources', 'ev-outlet', 'hybrid-outlet')) {
    return cannot('vehicle', title, ['no vehicle with outlets was named']);
  }
  const batteryOnly = facts.told('vehicle-kind') && facts.is('vehicle-kind', 'battery-only');
  const stops = batteryOnly ? [] : engineStops(home);
  const watts = facts.number('vehicle-watts') ?? 1500;
  const packKwh = batteryOnly ? (facts.number('vehicle-kwh') ?? 0) : 0;
  const { plugIn, leftOut } = splitPlugIn(loadsOf(home, ['must']));
  const { loads, dropped } = within(plugIn, watts, home);
  if (stops.length > 0 || loads.length === 0) {
    return cannot(
      'vehicle',
      title,
      stops.length > 0 ? stops : ['its outlet is too small for what must run'],
    );
  }
  const demand = demandOf(loads, home.goalSeasons);
  const usableKwh = packKwh * (1 - KEPT_TO_DRIVE);
  const hours = batteryOnly ? packHours(home, loads, usableKwh) : unknownHours();
  return makeRoute('vehicle', title, {
    ifs: [
      'it is at home when the power fails, and its maker allows this use',
      ...plugIfs(loads),
      ...(batteryOnly
        ? []
        : [
            'it stands in the open, 20 feet from every opening, for its engine can start by itself',
          ]),
    ],
    carries: loads.map((load) => load.name),
    leavesOut: [...leftOut, ...dropped, ...alwaysOff(home)],
    power: {
      continuousWatts: watts,
      startVa: watts * 1.5,
      runningWatts: demand.runningWatts,
      startDemandVa: demand.startVa,
    },
    nameplateKwh: batteryOnly ? packKwh : null,
    usableKwh: batteryOnly ? usableKwh : null,
    gap: '10 to 30 minutes, by hand',
    lasting: lastsHours(
      home,
      hours,
      batteryOnly ? 'What may be taken from the vehicle' : 'Its fuel, which we do not know,',
    ),
    parts: [part('cords')],
    notes: [`${Math.round(KEPT_TO_DRIVE * 100)} % is kept to drive away with.`],
  });
}

function within(all: readonly Load[], watts: number, home: Home) {
  let loads = [...all];
  const dropped: LeftOut[] = [];
  while (loads.length > 0) {
    const demand = demandOf(loads, home.goalSeasons);
    if (demand.runningWatts.value <= 0.8 * watts && demand.startVa.value <= 1.5 * watts) break;
    const worst = [...loads].sort(
      (a, b) => (b.startVa ?? b.runningVa).value - (a.startVa ?? a.runningVa).value,
    )[0]!;
    loads = loads.filter((load) => load !== worst);
    dropped.push({
      name: worst.name,
      must: true,
      why: 'starts or draws too hard for the outlet of the vehicle',
    });
  }
  return { loads, dropped };
}

function unknownHours() {
  return figure({
    value: 0,
    high: 24,
    unit: 'h',
    name: 'hours the fuel lasts',
    source: formula('the fuel in its tank is not known'),
  });
}
