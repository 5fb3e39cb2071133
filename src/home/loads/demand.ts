import { largestStart } from '../../physics/largest-start';
import { atEnd } from '../../quantity/at-end';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, formula, worked } from '../../quantity/figure-arithmetic';
import { onceMade } from '../../quantity/once-made';
import type { Demand, Load, Season } from '../home';
import { seasons } from '../home';
import { onceForEach } from './once-for-each';

type End = 'low' | 'value' | 'high';

/** What a set of loads adds up to in the seasons that matter, its energy once it is looked at. Loads that are off in an outage are left out. */
export function demandOf(loads: readonly Load[], goalSeasons: readonly Season[]): Demand {
  const on = loads.filter((load) => !load.offInOutage);
  const energy = onceMade(() => bySeason((season) => dayOf(on, season)));
  const byHour = onceMade(() => bySeason((season) => hourlyWatts(on, season)));
  return {
    ...peakOf(on, goalSeasons),
    get kwhPerDay() {
      return energy();
    },
    get wattsByHour() {
      return byHour();
    },
  };
}

function dayOf(on: readonly Load[], season: Season): Figure {
  const each = on.map((load) => load.kwhPerDay[season]);
  return addFigures(each, { unit: 'kWh/day', is: { code: 'energy-of-day', season } });
}

type Peak = Omit<Demand, 'kwhPerDay' | 'wattsByHour'>;

/** Of that what a source is held to, without the energy. Most kinds and sizes of a home carry the same loads: once for all of them. */
export const peakOf: (loads: readonly Load[], goalSeasons: readonly Season[]) => Peak = onceForEach(
  (loads, goalSeasons) => peakOfThese(loads, goalSeasons),
);

function peakOfThese(loads: readonly Load[], goalSeasons: readonly Season[]): Peak {
  const on = loads.filter((load) => !load.offInOutage);
  const each = goalSeasons.map((season) => seasonDemand(on, season));
  const hardest = each.reduce((a, b) => (b.startVa.value > a.startVa.value ? b : a));
  const biggest = each.reduce((a, b) => (b.runningWatts.value > a.runningWatts.value ? b : a));
  return {
    runningWatts: biggest.runningWatts,
    runningVa: biggest.runningVa,
    startVa: hardest.startVa,
    hardestStart: hardest.hardestStart,
    startsTogether: hardest.startsTogether,
    needs240: on.some((load) => load.volts === 240),
  };
}

/** Loads that run in a season: cooling does not count in winter, nor heating in summer. */
export function runsIn(load: Load, season: Season): boolean {
  return load.kwhPerDay[season].high > 0;
}

function seasonDemand(on: readonly Load[], season: Season) {
  const running = on.filter((load) => runsIn(load, season));
  const runningWatts = addFigures(
    running.map((l) => l.runningWatts),
    {
      unit: 'W',
      is: 'all-running',
    },
  );
  const runningVa = addFigures(
    running.map((l) => l.runningVa),
    {
      unit: 'VA',
      is: 'all-running-va',
    },
  );
  return { runningWatts, runningVa, ...startOf(running, runningVa) };
}

function startOf(running: readonly Load[], runningVa: Figure) {
  const peak = (end: End) => hardestStart(running, end);
  const likely = peak('value');
  const startVa = figure({
    value: likely.peakVa,
    low: Math.min(peak('low').peakVa, likely.peakVa),
    high: Math.max(peak('high').peakVa, likely.peakVa),
    unit: 'VA',
    is: 'hardest-start',
    as: () =>
      addFigures([runningVa, ...likely.starting.flatMap((id) => stepOf(running, id))], AT_START),
    endAs: (end) =>
      addFigures(
        [
          atEnd(runningVa, end),
          ...peak(end).starting.flatMap((id) => stepOf(running, id, (one) => atEnd(one, end))),
        ],
        AT_START,
      ),
    source: formula(
      {
        code: 'all-running',
        starting: likely.starting.flatMap((id) => calledBy(running, id)),
      },
      [runningVa],
      ['largest-start-plus-next', 'common-practice-no-source'],
    ),
  });
  return {
    startVa,
    hardestStart: likely.starting[0] ?? null,
    startsTogether: likely.starting,
  };
}

const AT_START = { unit: 'VA' };

function hardestStart(running: readonly Load[], end: End) {
  const loads = running.map((load) => ({
    id: load.id,
    runningVa: load.runningVa[end],
    startingVa: load.startVa?.[end] ?? load.runningVa[end],
    selfStarting: load.selfStarting,
  }));
  return largestStart({ startsKeptApart: false, loads });
}

const calledBy = (loads: readonly Load[], id: Load['id']) =>
  loads.filter((load) => load.id === id).map(({ called }) => called);

/** What a load asks for in the moment it starts, above what it takes while it runs. */
function stepOf(
  loads: readonly Load[],
  id: Load['id'],
  at: (one: Figure) => Figure = (one) => one,
): Figure[] {
  return loads
    .filter((load) => load.id === id)
    .map((load) =>
      worked(
        { by: 'difference', of: [at(load.startVa!), at(load.runningVa)] },
        { unit: 'VA', is: 'start-above-running' },
      ),
    );
}

function hourlyWatts(on: readonly Load[], season: Season): number[] {
  return Array.from({ length: 24 }, (_, hour) =>
    on.reduce((sum, load) => sum + load.kwhPerDay[season].value * load.shape[hour]! * 1000, 0),
  );
}

function bySeason<T>(make: (season: Season) => T): Record<Season, T> {
  return Object.fromEntries(seasons.map((season) => [season, make(season)])) as Record<Season, T>;
}
