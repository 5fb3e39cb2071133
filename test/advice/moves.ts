import interview from '#compiled/questions.js';
import { isEnough } from '../../src/advice/list/enough';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { mayGo } from '../../src/advice/ways-on/may-go';
import { withoutLoads } from '../../src/advice/ways-on/without-loads';
import type { Home } from '../../src/home/home';
import type { LoadId } from '../../src/home/loads/load-id';
import { livedHome } from '../../src/home/measures/lived-home';
import type { Answers } from '../../src/interview/answers';
import { homeFromAnswers } from '../../src/plan/home-from-answers';
import { loadsOf } from '../../src/routes/pick-loads';
import { type Case, caseOf } from './list-case';

/** How the advice of a home moved as one thing did: pairs looked at, and those that moved the wrong way. */
export interface Moved {
  readonly compared: number;
  readonly wrong: readonly string[];
}

const AS_OF = '2026-11-25';
/** A hundredth is no difference between the two ways of living, nor five of them where nothing is enough. */
const ALIKE = 1;
const NEAR = 5;
const LONGER = 1.5;
/** Things left away one by one, and lines whose price becomes the money told. */
const THINGS = 2;
const LINES = 3;

const cheapestEnough = ({ ranked }: Case): Weighed | undefined => ranked.all.find(isEnough);

const named = ({ counted, usd, living }: Weighed) =>
  `${counted.kind} ${counted.nameplateKwh ?? counted.generator?.ratedKw ?? ''} ${living.way} ${usd} $`;

/** The money told becomes the price of one line after the other: what is then chosen is never worse. */
export function asMoneyGrows(answers: Answers, { drawn, ranked }: Case): Moved {
  const prices = [...new Set(ranked.all.map(({ usd }) => usd))].slice(-LINES);
  const chosen = prices.map((usd) => {
    const told = { ...answers, 'budget-now': Math.ceil(usd), 'budget-later': 0 };
    return caseOf(homeFromAnswers(interview, told, AS_OF), drawn).ranked.chosen;
  });
  const pairs = chosen.slice(1).map((then, i) => [chosen[i]!, then] as const);
  const wrong = pairs.flatMap(([before, then]) => {
    if (before === null) return [];
    if (then === null) return [`nothing, where less money bought ${named(before)}`];
    const slack = isEnough(before) ? ALIKE : NEAR;
    const worse =
      then.value.odds < before.value.odds - slack ||
      (then.value.devices ?? 0) < (before.value.devices ?? 0) - slack ||
      (isEnough(before) && !isEnough(then));
    return worse
      ? [`${named(then)} carries ${then.value.odds} of 100, ${named(before)} ${before.value.odds}`]
      : [];
  });
  return { compared: pairs.length, wrong };
}

/** Half as long again: the cheapest that is enough never costs less. */
export function asGoalGrows(one: Case): Moved {
  const { goalHours } = one.home;
  const longer = { ...one.home, goalHours: { ...goalHours, value: LONGER * goalHours.value } };
  return never('less for a longer goal', one, caseOf(longer, one.drawn));
}

const has = ({ loads }: Home, id: LoadId) => loads.some((load) => load.id === id);

/** In both ways something is left that a source could carry; a pump that is off in every outage is none. */
const asksForPower = (home: Home) =>
  (['usual', 'thrifty'] as const).every(
    (way) => loadsOf(livedHome(home, way), ['must']).length > 0,
  );

/**
 * One thing less: the cheapest that is enough never costs more. A laptop is not taken from beside a desk computer, which it does
 * without in a thrifty outage: that is a way to need less taken away, and not a need.
 */
export function asThingsGo(one: Case): Moved {
  const moved = mayGo(one.home)
    .slice(0, THINGS)
    .filter(({ id }) => id !== 'laptop' || !has(one.home, 'desktop'))
    .map(({ id }) => withoutLoads(one.home, [id]))
    .filter(asksForPower)
    .map((less) => never('more for one thing less', caseOf(less, one.drawn), one));
  return {
    compared: moved.reduce((sum, { compared }) => sum + compared, 0),
    wrong: moved.flatMap(({ wrong }) => wrong),
  };
}

/** `easier` asks no more than `harder`, and so costs no more, but for one generic step. */
function never(what: string, easier: Case, harder: Case): Moved {
  const [less, more] = [easier, harder].map(cheapestEnough);
  if (more === undefined) return { compared: 0, wrong: [] };
  if (less === undefined)
    return { compared: 1, wrong: [`${what}: nothing, against ${named(more)}`] };
  const wrong =
    less.usd > oneStepUp(easier, more) ? [`${what}: ${named(less)} against ${named(more)}`] : [];
  return { compared: 1, wrong };
}

/** The next price above it at which its kind can be had. */
function oneStepUp({ ranked }: Case, { usd, counted }: Weighed): number {
  const dearer = ranked.weighed.filter((one) => one.counted.kind === counted.kind && one.usd > usd);
  return dearer.length === 0 ? usd : Math.min(...dearer.map((one) => one.usd));
}
