import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { mustMissed } from '../../routes/must-carried';
import { loadsOf } from '../../routes/pick-loads';
import { isEnough } from '../list/enough';
import { lineOf } from '../list/line';
import type { Ranked } from '../list/list-of';
import type { SizeKind } from '../list/source';
import type { Weighed } from '../list/unbeaten';
import { bestPayable, countedIn, fewOf } from './best-payable';
import { mayGo } from './may-go';
import type { WaysOn } from './ways-on';
import { withoutLoads } from './without-loads';

/** So many sets of things are tried at most, to keep a plan quick. */
const MOST_TRIES = 6;

/** What goes so that the rest is carried to the goal within the money: as little as does it; null where that is no way worth taking. */
export function lessCarried(
  home: Home,
  drawn: SyntheticYears,
  { chosen }: Ranked,
  sizeKind: SizeKind,
): WaysOn['lessCarried'] {
  const sets = setsToTry(home, chosen).slice(0, MOST_TRIES);
  if (sets.length === 0) return null;
  const few = fewOf(home, drawn);
  const enoughWithout = (without: readonly LoadId[]): Less | null => {
    const rest = withoutLoads(home, without);
    const tried = bestPayable(rest, few, sizeKind);
    if (tried === null || !isEnough(tried)) return null;
    const found = countedIn(rest, drawn, tried);
    return isEnough(found) ? { found, without } : null;
  };
  let less: Less | null = null;
  for (const without of sets) {
    less = enoughWithout(without);
    if (less !== null) break;
  }
  // Things went together, the hungriest first: each that can stay after all does, the hungriest first.
  for (const id of less !== null && less.without.length > 1 ? less.without : []) {
    less = enoughWithout(less!.without.filter((one) => one !== id)) ?? less;
    if (less!.without.length === 1) break;
  }
  if (less === null || !isWorth(home, less, chosen)) return null;
  return { line: lineOf(less.found, true), without: less.without };
}

export interface Less {
  readonly found: Weighed;
  readonly without: readonly LoadId[];
}

/** Share of the things that must run beyond which little of the job is left, and of the price that makes up for it. Our judgement. */
const MOST_GONE = 0.5;
const MUCH_SAVED = 0.25;

export function isWorth(home: Home, { found, without }: Less, chosen: Weighed | null): boolean {
  if (chosen === null || without.length <= MOST_GONE * loadsOf(home, ['must']).length) return true;
  return found.usd <= (1 - MUCH_SAVED) * chosen.usd;
}

/** Each thing alone, first those that the chosen one leaves out; then more and more together. At least one thing stays. */
function setsToTry(home: Home, chosen: Weighed | null): LoadId[][] {
  const left =
    chosen === null ? [] : mustMissed(chosen.living.home, chosen.counted).map(({ id }) => id);
  const may = mayGo(home).map(({ id }) => id);
  const order = [
    ...may.filter((id) => left.includes(id)),
    ...may.filter((id) => !left.includes(id)),
  ];
  const most = Math.min(order.length, loadsOf(home, ['must']).length - 1);
  const together = Array.from({ length: Math.max(0, most - 1) }, (_, i) => order.slice(0, i + 2));
  const missedSet = together.filter((set) => set.length === left.length);
  const singles = most < 1 ? [] : order.map((id) => [id]);
  return [...singles.slice(0, 3), ...missedSet, ...together, ...singles.slice(3)];
}
