import type { Home } from '../../home/home';
import { healthHangs } from '../../home/people/health-devices';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { onceMade } from '../../quantity/once-made';
import { fedHome } from '../../routes/fed-home';
import { mustLoads } from '../../routes/must-carried';
import { loadsOf } from '../../routes/pick-loads';
import type { Candidate } from '../list/candidate';
import { ENOUGH, isEnough, reachesGoal } from '../list/enough';
import { lineOf } from '../list/line';
import type { Ranked } from '../list/list-of';
import type { SizeKind } from '../list/source';
import { littleAboveUsd } from '../little-above';
import { byTimetable } from './by-timetable';
import { lessCarried } from './less-carried';
import { oneRoom } from './one-room';
import type { WaysOn } from './ways-on';

/** What would reach the goal where nothing within the money does; null where something does, and where nothing was named that must run. */
export function findWaysOn(
  home: Home,
  drawn: SyntheticYears,
  ranked: Ranked,
  sizeKind: SizeKind,
): WaysOn | null {
  if (ranked.chosen !== null && isEnough(ranked.chosen)) return null;
  if (mustLoads(home).length === 0) return null;
  // Many homes are weighed for it.
  const less = onceMade(() => lessCarried(home, drawn, ranked, sizeKind));
  return {
    moreMoney: moreMoney(ranked),
    littleMore: littleMore(ranked),
    shorterGoal: shorterGoal(home, ranked),
    get lessCarried() {
      return less();
    },
    oneRoom: oneRoom(home, drawn, ranked.chosen, sizeKind),
    timetable: byTimetable(home, ranked.chosen),
  };
}

function moreMoney({ all, budgetUsd }: Ranked): WaysOn['moreMoney'] {
  const reaching = all.find(reachesGoal) ?? all.find(isEnough);
  if (reaching === undefined || budgetUsd === null) return null;
  return { line: lineOf(reaching, false), moreUsd: reaching.usd - budgetUsd };
}

/** What a little more money buys must do so many times as much of what must run, where it does not do all of it for long. Our judgement. */
const MUCH_MORE = 2;

/** The first above the money: where it buys no source at all, or one that does little beside what a little more does. */
function littleMore({ all, chosen, budgetUsd }: Ranked): WaysOn['littleMore'] {
  if (budgetUsd === null || chosen?.value.long) return null;
  const next = all.find(
    ({ usd, value }) =>
      usd > budgetUsd &&
      usd <= littleAboveUsd(budgetUsd) &&
      (chosen === null || value.long || value.share >= MUCH_MORE * chosen.value.share),
  );
  if (next === undefined || reachesGoal(next)) return null;
  return { line: lineOf(next, false), moreUsd: next.usd - budgetUsd };
}

/** Shorter than this is no goal to plan for, h. Our judgement. */
const LEAST_HOURS = 2;

/** With all that any backup can carry: of those within the money the one that carries it longest, the cheapest of equals. */
function shorterGoal(home: Home, { weighed, scale, budgetUsd }: Ranked): WaysOn['shorterGoal'] {
  const careful = healthHangs(home);
  const whole = weighed.filter(
    (one) => (budgetUsd === null || one.usd <= budgetUsd) && carriesAllThere(one),
  );
  const reached = whole.map((one) => {
    const { living, counted } = one;
    const loads = loadsOf(fedHome(counted.kind, living.home), ['must']);
    const { odds } = scale.countOf(living);
    return { one, hours: odds.hoursReached({ route: counted, loads, careful }, ENOUGH / 100) };
  });
  const best = reached.reduce<(typeof reached)[number] | null>(
    (a, b) =>
      a === null || b.hours > a.hours || (b.hours === a.hours && b.one.usd < a.one.usd) ? b : a,
    null,
  );
  if (best === null || best.hours < LEAST_HOURS) return null;
  return { line: lineOf(scale.weigh(best.one), true), hours: best.hours };
}

const carriesAllThere = ({ living, counted }: Candidate): boolean =>
  loadsOf(living.home, ['must']).every(({ id }) => counted.carries.includes(id));
