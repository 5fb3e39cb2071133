import type { Home } from '../../home/home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { budgetUsd } from '../../routes/budget';
import type { SizedKind } from '../../routes/sized';
import { hardestSeason } from '../hardest-season';
import { SizeOdds } from '../ride/size-odds';
import type { Candidate } from './candidate';
import { chooseOf } from './choose';
import { reachesGoal } from './enough';
import { type Line, lineOf, ownThere } from './line';
import { asUsual, type Living, thriftily } from './living';
import { MOST_LINES, shortlist } from './shortlist';
import { livedSources, type SizeKind, type Source, usualSources } from './source';
import { thriftAlone } from './thrift-alone';
import { type Count, Scale, type Weighed } from './unbeaten';
import { NO_VALUE, type Value, weighingOf } from './value';

/** What nothing beats, and the one of it to advise. */
export interface Ranked {
  readonly all: readonly Weighed[];
  /** All that was looked at, and what it was weighed on. */
  readonly weighed: readonly Candidate[];
  readonly scale: Scale;
  /** Null where the money buys none. */
  readonly chosen: Weighed | null;
  /** The cheapest that reaches the goal, whatever it costs. */
  readonly reaching: Weighed | null;
  readonly budgetUsd: number | null;
}

/**
 * Weighs all routes, sizes, fuel and ways of living together. Kinds are sized from cheap to dear, and no further than to a price above
 * which nothing could be worth more.
 * @param kinds as they are sized for the usual way; null: they are sized here as far as needed
 * @param sizeKind sizes a kind for the thrifty way; null: only the usual way is weighed
 * @param payableOnly nothing above the money told is looked at
 * @param known the usual way of the same home and kinds, where a list of it was made already
 */
export function rank(
  home: Home,
  drawn: SyntheticYears,
  kinds: readonly SizedKind[] | null,
  sizeKind: SizeKind | null,
  payableOnly = false,
  known = usualPart(home, drawn, kinds),
): Ranked {
  const budget = budgetUsd(home);
  const most = budget ?? Infinity;
  const { living: usual } = known;
  const thrifty = sizeKind === null ? null : thriftily(home);
  const counts = new Map([[usual, known.count]]);
  if (thrifty !== null) counts.set(thrifty, countOf(thrifty, drawn, kinds));
  const scale = new Scale((living) => counts.get(living)!, known.values);
  const sources = [
    ...(known.sources ?? (sizeKind === null ? [] : livedSources(usual, drawn, sizeKind))),
    ...(thrifty === null || sizeKind === null ? [] : livedSources(thrifty, drawn, sizeKind)),
  ]
    .filter(({ leastUsd }) => !payableOnly || leastUsd <= most)
    .sort((a, b) => a.leastUsd - b.leastUsd);
  const alone = thrifty === null || sizeKind === null ? null : thriftAlone(thrifty);
  const candidates: Candidate[] = alone === null ? [] : [alone];
  let all: Weighed[] = [];
  for (const [i, source] of sources.entries()) {
    candidates.push(...source.candidates().filter(({ usd }) => !payableOnly || usd <= most));
    const next = sources[i + 1]?.leastUsd;
    // Those of one least price are weighed together.
    if (next === source.leastUsd) continue;
    all = scale.unbeaten(candidates);
    if (next !== undefined && all.some((one) => one.usd < next && isTop(one))) break;
  }
  return {
    all,
    weighed: candidates,
    scale,
    chosen: chooseOf(all, budget, (one) => scale.deviceShare(one)),
    reaching: all.find(reachesGoal) ?? null,
    budgetUsd: budget,
  };
}

/** The usual way of living, with what was counted of it: two lists of one home share it. */
export interface UsualPart {
  readonly living: Living;
  readonly count: Count;
  /** Null: the kinds are not sized yet. */
  readonly sources: readonly Source[] | null;
  readonly values: Map<Candidate, Value>;
}

/** Nothing is counted yet. */
export function usualPart(
  home: Home,
  drawn: SyntheticYears,
  kinds: readonly SizedKind[] | null,
): UsualPart {
  const living = asUsual(home);
  return {
    living,
    count: countOf(living, drawn, kinds),
    sources: kinds === null ? null : usualSources(living, kinds),
    values: new Map(),
  };
}

const countOf = (
  { home }: Living,
  drawn: SyntheticYears,
  kinds: readonly SizedKind[] | null,
): Count => ({
  by: weighingOf(home, kinds ?? []),
  odds: new SizeOdds(home, drawn, hardestSeason(home)),
});

/** Nothing can be worth more. */
const isTop = ({ living, value }: Weighed): boolean =>
  living.way === 'usual' &&
  value.odds === 100 &&
  value.full &&
  value.share === 100 &&
  (value.devices ?? 100) === 100;

/** The list as it is printed, from nothing bought to the best, and the place of the chosen one on it. */
export function linesOf(
  home: Home,
  { all, chosen, reaching, budgetUsd: budget }: Ranked,
): {
  lines: Line[];
  advised: number | null;
} {
  const stay = [chosen, reaching].filter((one) => one !== null);
  const free = all[0]?.usd === 0;
  const short = shortlist(all, stay, free ? MOST_LINES : MOST_LINES - 1);
  const lines = short.map((one) => lineOf(one, budget === null || one.usd <= budget));
  const at = chosen === null ? -1 : short.indexOf(chosen);
  return {
    lines: free ? lines : [{ ...NOTHING, ownThere: ownThere(home) }, ...lines],
    advised: at < 0 ? null : at + (free ? 0 : 1),
  };
}

/** The list begins with what no money buys. */
const NOTHING: Omit<Line, 'ownThere'> = {
  route: null,
  way: 'usual',
  usd: 0,
  storedGal: null,
  hours: { likely: 0, careful: 0 },
  carried: { carried: 0, of: 0 },
  missed: [],
  value: NO_VALUE,
  reaches: false,
  withinBudget: true,
};
