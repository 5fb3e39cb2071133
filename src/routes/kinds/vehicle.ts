import type { Home, Load } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import { type HomeVehicle, vehicleOf } from '../../home/vehicle';
import { type Figure, figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import { practice } from '../../tables/practice-figures';
import { cordsPart } from '../cords-there';
import { part } from '../costs';
import { LOAD_SHARE } from '../fit-power';
import { cannot, lasts, lastsHours, makeRoute } from '../make-route';
import type { Note } from '../note';
import { alwaysOff, loadsOf, splitPlugIn } from '../pick-loads';
import type { Lasting, LeftOut, Route } from '../route';
import type { If } from '../stops/condition';
import type { Stop } from '../stops/stop';
import { generatorStops, plugIfs, wiringIfs, wiringStops } from '../stops/stops';
import { transferTime } from '../transfer-time';
import { packHours } from './packs';

interface Variant {
  readonly kind: 'vehicle' | 'vehicle-inlet';
}

const onCords: Variant = { kind: 'vehicle' };
const onInlet: Variant = {
  kind: 'vehicle-inlet',
};

const has = ({ facts }: Home) => facts.has('own-sources', 'ev-outlet', 'hybrid-outlet');

/** A vehicle that has outlets, feeding what plugs in by cord. Anything but a battery-only vehicle is a generator. */
export function vehicle(home: Home): Route {
  const told = home.facts.told('own-sources');
  if (!has(home)) return cannot('vehicle', [{ code: told ? 'no-vehicle' : 'vehicle-unknown' }]);
  const gives = home.facts.told('vehicle-volts') && home.facts.is('vehicle-volts', 'v240');
  return fed(home, onCords, splitPlugIn(loadsOf(home, ['must']), gives ? 240 : 120));
}

/**
 * The same, feeding chosen 120 V circuits through an inlet that a licensed electrician fits: a furnace, lights, and the wall outlets
 * of one room, where a heater may be plugged in, as it may on no cord. Null without such a vehicle.
 */
export function vehicleInlet(home: Home): Route | null {
  if (!has(home)) return null;
  const all = loadsOf(home, ['must']);
  const leftOut = all
    .filter(({ volts }) => volts !== 120)
    .map((load): LeftOut => ({ load: load.id, must: true, why: { code: 'needs-240' } }));
  const wired = { plugIn: all.filter(({ volts }) => volts === 120), leftOut };
  return fed(home, onInlet, wired, wiringStops(home));
}

function fed(
  home: Home,
  { kind }: Variant,
  { plugIn, leftOut }: ReturnType<typeof splitPlugIn>,
  more: readonly Stop[] = [],
): Route {
  const { facts } = home;
  const store = vehicleOf(facts);
  const stops = [...(store === null ? generatorStops(home) : []), ...more];
  const watts = facts.number('vehicle-watts') ?? practice('vehicle-outlet-watts');
  const volts = facts.told('vehicle-volts') && facts.is('vehicle-volts', 'v240') ? 240 : 120;
  const { loads, dropped } = within(plugIn, watts, home);
  if (stops.length > 0 || loads.length === 0) {
    return cannot(kind, stops.length > 0 ? stops : [{ code: 'vehicle-too-small' }]);
  }
  const demand = demandOf(loads, home.goalSeasons);
  const inlet = kind === 'vehicle-inlet';
  return makeRoute(kind, {
    ifs: [...ifsOf(store), ...(inlet ? [MAY_FEED, ...wiringIfs(home)] : plugIfs(loads))],
    carries: loads.map((load) => load.id),
    leavesOut: [...leftOut, ...dropped, ...alwaysOff(home)],
    power: {
      continuousWatts: watts,
      startVa: watts * practice('vehicle-start-per-watt'),
      runningWatts: demand.runningWatts,
      startDemandVa: demand.startVa,
    },
    nameplateKwh: store?.packKwh ?? null,
    usableKwh: store?.storeKwh ?? null,
    transferTime: transferTime(inlet ? 'switched-over-by-hand' : 'vehicle-by-hand'),
    lasting: lastingOf(home, loads, store),
    parts: inlet
      ? [part('inlet-interlock', 1, { code: 'inlet-of-120' }), part('permit')]
      : [cordsPart(home)],
    notes: [
      ...(store === null ? [] : notesOf(store)),
      ...(volts === 240 ? ['vehicle-240-outlet' as const] : []),
    ],
  });
}

const MAY_FEED: If = 'vehicle-may-feed-circuits';

function ifsOf(store: HomeVehicle | null): If[] {
  if (store === null) {
    return ['vehicle-at-home', 'vehicle-in-the-open'];
  }
  return [awayHours(store) > 0 ? 'vehicle-kept-at-home' : 'vehicle-at-home'];
}

/** Hours from its usual charge while it stands at home; with none promised where it is away for part of the day. */
function lastingOf(home: Home, loads: readonly Load[], store: HomeVehicle | null): Lasting {
  if (store === null) {
    return lastsHours(home, unknownHours(), { code: 'unknown-fuel' });
  }
  const hours = packHours(home, loads, store.storeKwh);
  const away = awayHours(store);
  if (away === 0) return lastsHours(home, hours, { code: 'vehicle-store' });
  return lasts(untilAway(store, hours), false, {
    code: 'vehicle-away',
    storeHours: hours,
    awayHours: away,
    told: home.facts.told('vehicle-away'),
    goalHours: home.goalHours.value,
  });
}

/** Hours until it drives off, for an outage that starts at any hour of the day: none, half of them, the longest. */
function untilAway({ homeByHour }: HomeVehicle, hours: Figure): Figure {
  const stays = homeByHour
    .map((_, start) => homeByHour.findIndex((_, i) => homeByHour[(start + i) % 24] === 0))
    .sort((a, b) => a - b);
  const source = {
    ...formula('until-it-is-away', [hours]),
    ends: 'when-it-is-away',
  } as const;
  const value = Math.min(hours.value, stays[12]!);
  const high = Math.max(value, Math.min(hours.high, stays.at(-1)!));
  return figure({ ...hours, low: 0, value, high, is: 'hours-until-away', source });
}

function awayHours({ homeByHour }: HomeVehicle): number {
  return homeByHour.filter((at) => at === 0).length;
}

function notesOf({
  chargeShare,
  packKwh,
  reserveMiles,
  reserveKwh,
  storeKwh,
  fullStoreKwh,
}: HomeVehicle): Note[] {
  return [
    { code: 'kept-to-drive-away', miles: reserveMiles, kwh: reserveKwh, ofKwh: packKwh },
    { code: 'vehicle-charge', share: chargeShare, givesKwh: storeKwh, fullGivesKwh: fullStoreKwh },
  ];
}

function within(all: readonly Load[], watts: number, home: Home) {
  let loads = [...all];
  const dropped: LeftOut[] = [];
  while (loads.length > 0) {
    const demand = demandOf(loads, home.goalSeasons);
    const starts = demand.startVa.value <= practice('vehicle-start-per-watt') * watts;
    if (demand.runningWatts.value <= LOAD_SHARE * watts && starts) break;
    const worst = [...loads].sort(
      (a, b) => (b.startVa ?? b.runningVa).value - (a.startVa ?? a.runningVa).value,
    )[0]!;
    loads = loads.filter((load) => load !== worst);
    dropped.push({
      load: worst.id,
      must: true,
      why: { code: 'too-hard-for-vehicle' },
    });
  }
  return { loads, dropped };
}

function unknownHours() {
  return figure({
    value: 0,
    high: 24,
    unit: 'h',
    is: 'hours-fuel-lasts',
    source: { ...formula('vehicle-fuel'), ends: 'nothing-known' },
  });
}
