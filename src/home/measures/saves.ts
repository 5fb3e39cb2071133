import type { Demand, Load, Season } from '../home';
import { demandOf } from '../loads/demand';
import { packIdleWatts } from '../loads/pack-idle';
import type { Household } from './household';

/** What a measure takes off the sums of this home, likely values, never below 0. */
export interface Saves {
  /** The narrowest sum it takes anything off: what must run, with good-to-have, or everything. */
  readonly of: 'must' | 'good' | 'all';
  /** The season of the goal in which its energy counts most. */
  readonly season: Season;
  readonly runningWatts: number;
  readonly startVa: number;
  readonly kwhPerDay: number;
  /** What a plug-in pack draws less for itself, kWh a day inside it. */
  readonly packKwhPerDay: number;
}

const scopes = {
  must: ['must'],
  good: ['must', 'good'],
  all: ['must', 'good', 'wait'],
} as const;

/** Less than these is no effect: W, VA, kWh a day. */
const LEAST = { watts: 1, va: 1, kwh: 0.005 } as const;

/** What one list of loads takes less than another; null where it takes nothing off. */
export function savesOf(
  { goalSeasons }: Pick<Household, 'goalSeasons'>,
  before: readonly Load[],
  after: readonly Load[],
): Saves | null {
  if (before === after) return null;
  for (const of of ['must', 'good', 'all'] as const) {
    const [usual, less] = [before, after].map((loads) => inScope(loads, scopes[of]));
    if (areSame(usual!, less!)) continue;
    const saves = difference(usual!, less!, goalSeasons);
    if (hasEffect(saves)) return { of, ...saves };
  }
  return null;
}

const inScope = (loads: readonly Load[], ranks: readonly string[]) =>
  loads.filter((load) => ranks.includes(load.rank) && !load.offInOutage);

const areSame = (a: readonly Load[], b: readonly Load[]) =>
  a.length === b.length && a.every((load, i) => load === b[i]);

function difference(before: readonly Load[], after: readonly Load[], seasons: readonly Season[]) {
  const [usual, less]: Demand[] = [demandOf(before, seasons), demandOf(after, seasons)];
  const kwh = (season: Season) => usual!.kwhPerDay[season].value - less!.kwhPerDay[season].value;
  const season = seasons.reduce((a, b) => (kwh(b) > kwh(a) ? b : a));
  const plugIn = (loads: readonly Load[]) => loads.filter((load) => load.plugIn);
  const idle = (loads: readonly Load[]) => packIdleWatts(plugIn(loads), season);
  return {
    season,
    runningWatts: Math.max(0, usual!.runningWatts.value - less!.runningWatts.value),
    startVa: Math.max(0, usual!.startVa.value - less!.startVa.value),
    kwhPerDay: Math.max(0, kwh(season)),
    packKwhPerDay: Math.max(0, (24 * (idle(before) - idle(after))) / 1000),
  };
}

function hasEffect(saves: Omit<Saves, 'of'>): boolean {
  return (
    saves.runningWatts >= LEAST.watts ||
    saves.startVa >= LEAST.va ||
    saves.kwhPerDay >= LEAST.kwh ||
    saves.packKwhPerDay >= LEAST.kwh
  );
}
