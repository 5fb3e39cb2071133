import type { Home, Load } from '../../home/home';
import { demandOf } from '../../home/loads/demand';
import { practice } from '../../tables/practice-figures';
import { part } from '../costs';
import { cannot, lastsHours, makeRoute } from '../make-route';
import { loadsOf } from '../pick-loads';
import type { Part, Route } from '../route';
import { transferTime } from '../transfer-time';
import { choosePack, type PackSize, packHours, packParts, packSizes } from './packs';

/** Anything but a medical device is carried for a day; after that a generator or the grid refills it. */
const DAY_HOURS = 24;
const SUMP_KWH = practice('sump-set-kwh');
/** A second pump with a battery of its own. */
const SUMP_SET = {
  nameplateKwh: SUMP_KWH,
  boughtKwh: SUMP_KWH,
  usableKwh: SUMP_KWH * practice('sump-set-usable-share'),
  watts: practice('sump-set-watts'),
  startVa: practice('sump-set-watts'),
};

/** The one thing that must not stop: a medical device, else the sump pump, else being reached. */
export function singleBattery(home: Home): Route {
  const loads = theOneJob(loadsOf(home, ['must']));
  const size = loads.length === 0 ? null : sizeOf(home, loads);
  if (size === null) {
    return cannot('single-battery', [{ code: 'no-single-job' }]);
  }
  return oneJobRoute(home, loads, size);
}

/** The same at every size, smallest first; empty where no single job fits. The set for a sump pump has one size. */
export function singleBatterySizes(home: Home): Route[] {
  const loads = theOneJob(loadsOf(home, ['must']));
  if (loads.length === 0) return [];
  const one = loads[0]!.id === 'sump' ? sizeOf(home, loads) : null;
  const sizes = one === null ? packSizes(home, loads) : [one];
  return sizes.map((size) => oneJobRoute(home, loads, size));
}

function oneJobRoute(home: Home, loads: readonly Load[], size: PackSize): Route {
  const demand = demandOf(loads, home.goalSeasons);
  const jobs = loads.map((load) => load.called);
  return makeRoute('single-battery', {
    carries: loads.map((load) => load.id),
    leavesOut: loadsOf(home, ['must'])
      .filter((load) => !loads.includes(load))
      .map((load) => ({ load: load.id, must: true, why: { code: 'one-job-only' } })),
    power: {
      continuousWatts: size.watts,
      startVa: size.startVa,
      runningWatts: demand.runningWatts,
      startDemandVa: demand.startVa,
    },
    nameplateKwh: size.nameplateKwh,
    usableKwh: size.usableKwh,
    transferTime: transferTime('ready-at-device'),
    lasting: lastsHours(home, size.hours, { code: 'one-job', kwh: size.nameplateKwh, jobs }),
    parts: loads[0]!.id === 'sump' ? [part('sump-battery')] : packParts(size, buy),
    notes: ['beside-any-larger-route'],
  });
}

function isMedical(load: Load): boolean {
  return load.restsOn.includes('medical-devices');
}

function theOneJob(loads: readonly Load[]): Load[] {
  const medical = loads.filter((load) => isMedical(load) && load.plugIn);
  if (medical.length > 0) return medical;
  const sump = loads.filter((load) => load.id === 'sump');
  if (sump.length > 0) return sump;
  return loads.filter(
    (load) => load.restsOn.includes('internet-kind') || load.id === 'phone-charging',
  );
}

function sizeOf(home: Home, loads: readonly Load[]): PackSize | null {
  if (loads[0]!.id === 'sump') {
    return { ...SUMP_SET, hours: packHours(home, loads, SUMP_SET.usableKwh) };
  }
  const goal = home.goalHours.value;
  return choosePack(home, loads, loads.some(isMedical) ? goal : Math.min(goal, DAY_HOURS));
}

function buy(kwh: number): Part {
  return kwh <= 0.6
    ? part('small-single-job-battery', 1, { code: 'small-battery', kwh })
    : part('power-pack', kwh, { code: 'one-job-battery', kwh });
}
