import { MEANS_EVERY_HOURS } from '../../advice/ride/sampled-starts';
import type { Way } from '../../home/home';
import { traitsOf } from '../../kinds/route-traits';
import { everyNthStart } from '../../outage/every-nth-start';
import { seasonMonths } from '../../outage/season';
import { SAMPLE_EVERY_HOURS } from '../../outage/walk/sampled-odds';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import type { Cite } from '../../quantity/cite';
import { type Figure, figure } from '../../quantity/figure';
import { operand, worked } from '../../quantity/figure-arithmetic';
import { monthsOf } from '../../routes/battery-hours';
import type { Route } from '../../routes/route';
import type { Plan } from '../plan';
import { storesOf } from './stores-of';

const WEATHER_CITE: Cite = [{ of: 'weather', ref: 'TMY3 statistics (NREL/TP-581-43156)' }];

/**
 * Of a hundred outages of the goal's length that begin in its hardest season, those that the route advised carries
 * through: by the likely or by the careful count, in its own way of living or in the other. Null where none were counted.
 */
export function countedOdds(
  plan: Plan,
  careful: boolean,
  way: Way = plan.advice.route.way,
): Figure | null {
  const { route } = plan.advice;
  const ways = plan.waysOfLiving.routes.find(({ kind }) => kind === route.kind);
  if (ways === undefined) return null;
  const { share, carefulShare } = ways[way];
  const stored = ways.storedGal;
  const everyHours = careful || stored !== null ? MEANS_EVERY_HOURS : likelyEvery(route);
  return asCounted(plan, careful ? carefulShare : share, {
    everyHours,
    careful,
    stores: storesOf(route, { storedGal: stored, careful }),
  });
}

/** A store that depends on the time since the start is sampled; a battery or a generator alone is counted in every hour. */
function likelyEvery({ kind, generator, usableKwh }: Route): number {
  const sampled = traitsOf[kind].vehicle || (generator !== null && usableKwh !== null);
  return sampled ? SAMPLE_EVERY_HOURS : 1;
}

function asCounted(
  { rideThrough, weatherYears: years }: Plan,
  share: number,
  given: { everyHours: number; careful: boolean; stores: ReturnType<typeof storesOf> },
): Figure {
  const { everyHours, careful, stores } = given;
  const span = monthsOf[rideThrough.season];
  const source = { kind: 'formula' } as const;
  return figure({
    value: 100 * share,
    unit: 'count',
    source,
    as: () => {
      const all = everyNthStart(years * HOURS_PER_YEAR, span, everyHours).length;
      const months = seasonMonths(span);
      const starts = operand(all, 'count', 'outages-counted', {
        cite: WEATHER_CITE,
        counted: { code: 'starts', everyHours, months, years },
      });
      const rode = operand(Math.round(share * all), 'count', 'outages-carried', {
        counted: {
          code: 'ridden-through',
          outageHours: rideThrough.goalHours,
          careful,
          stores,
        },
      });
      const hundred = operand(100, 'count', 'a-hundred');
      return worked({ by: 'ratio', of: [hundred, rode], under: [starts] }, { unit: 'count' });
    },
  });
}
