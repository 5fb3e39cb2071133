import type { Plan } from '../../../plan/plan';
import { sayOneIn, sayTimesAYear } from '../../../quantity/say-chance';
import { sayOutageRecord } from '../place/say-outage-record';

/** How sure the plan is. */
export const sureness = {
  title: 'How sure this is',
  weather: ({ weatherYears, seed }: Pick<Plan, 'weatherYears' | 'seed'>) =>
    `Weather: ${weatherYears} drawn years from those stations' statistics, seed ${seed}; the same answers always give the same plan.`,
  outages: ({ ordinaryTimes, majorTimes, chanceOfGoal, record }: Plan['outlook']) =>
    `Outages to expect, weak evidence, so in round numbers: ordinary ones ${sayTimesAYear(ordinaryTimes)}, major ones ${sayTimesAYear(majorTimes)}. The chance of at least one as long as your goal in ten years is ${sayOneIn(chanceOfGoal)}. They come from ${sayOutageRecord(record)}, and from your own years where you told us.`,
  sources: (count: number) =>
    `Figures come from your labels first, then from published tables and common practice. The plan file names the source beside each. There are ${count} sources.`,
};
