import type { Interview } from '../interview/questions/question';
import type { Figure } from '../quantity/figure';
import { figure } from '../quantity/figure';
import { answerFigure, type Widths } from './answer-figure';
import { checkBill } from './bill/bill-check';
import type { Facts } from './facts';
import { seasonsOf } from './goal-seasons';
import type { Home, Site } from './home';
import { demandOf } from './loads/demand';
import { loadsOfHome } from './loads/loads-of-home';
import { lifeSupport } from './people/life-support';
import { siteOf } from './site';
import { climateHours } from './weather/climate-hours';

/**
 * The home that is known by these facts. What was not answered counts as "not sure".
 * @param asOf the day the ages of figures are counted from, YYYY-MM-DD
 * @param site of these facts, where it was looked up before
 */
export function buildHome(
  facts: Facts,
  widths: Widths,
  asOf: string,
  site: Site = siteOf(facts),
): Home {
  const { climate } = site.place;
  const hours = climateHours(climate);
  const { usual, loads, billYear, calibration } = loadsOfHome(facts, widths, site);
  const goalSeasons = seasonsOf(facts);
  const ranked = (...ranks: string[]) => loads.filter((load) => ranks.includes(load.rank));
  return {
    way: 'usual',
    name: facts.told('home-name') ? String(facts.value('home-name')) : 'my-home',
    asOf,
    facts,
    site,
    people:
      answerFigure(facts, widths, 'people-count', { unit: 'people' }) ??
      figure({ value: 1, unit: 'people', source: { kind: 'assumed', is: 'one-at-least' } }),
    lifeSupport: lifeSupport(facts),
    loads,
    usualLoads: usual,
    demand: {
      must: demandOf(ranked('must'), goalSeasons),
      good: demandOf(ranked('must', 'good'), goalSeasons),
      all: demandOf(loads, goalSeasons),
    },
    goalHours: wholeHours(answerFigure(facts, widths, 'goal-hours', { unit: 'h' })!),
    goalSeasons,
    billYear,
    billCheck: checkBill({ facts, loads: usual, climate, hours, billYear }),
    calibration,
  };
}

/** Outages are counted by the hour: a part of one is planned for as a whole, by fuel, size and odds alike. */
const wholeHours = (goal: Figure): Figure => ({
  ...goal,
  low: Math.ceil(goal.low),
  value: Math.ceil(goal.value),
  high: Math.ceil(goal.high),
});

/** Low and high of each number that may be assumed, by question id. */
export function widthsOf(interview: Interview): Widths {
  const wide = interview.questions.filter((q) => q.unsure.low !== undefined);
  return new Map(wide.map((q) => [q.id, { low: q.unsure.low!, high: q.unsure.high! }]));
}
