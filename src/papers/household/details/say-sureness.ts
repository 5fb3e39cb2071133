import type { Plan } from '../../../plan/plan';
import { sayOneIn, sayTimesAYear } from '../../../quantity/say-chance';

/** Where the weather comes from, what outages to expect and how weak that evidence is. */
export function saySureness(plan: Plan): string[] {
  const { place } = plan.home.site;
  const { ordinaryTimes, majorTimes, chanceOfGoal, record } = plan.outlook;
  return [
    '## How sure this is',
    `${place.basis} ${place.stationsUsed} ${place.warnings.join(' ')}`.trim(),
    `Weather: ${plan.weatherYears} drawn years from those stations' statistics, seed ${plan.seed}; the same answers always give the same plan.`,
    `Outages to expect, weak evidence, so in round numbers: ordinary ones ${sayTimesAYear(ordinaryTimes)}, major ones ${sayTimesAYear(majorTimes)}. The chance of at least one as long as your goal in ten years is ${sayOneIn(chanceOfGoal)}. They come from ${record}, and from your own years where you told us.`,
    `Figures come from your labels first, then from published tables and common practice. The plan file names the source beside each. There are ${plan.sources.length} sources.`,
  ];
}
