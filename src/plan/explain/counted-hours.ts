import { hardestSeason } from '../../advice/hardest-season';
import { MEANS_EVERY_HOURS } from '../../advice/ride/sampled-starts';
import { hasFixedBattery, isPack } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { everyNthStart } from '../../outage/every-nth-start';
import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import type { Counted } from '../../quantity/counted';
import { type Figure, figure } from '../../quantity/figure';
import { monthsOf } from '../../routes/battery-hours';
import { sampledHours } from '../../routes/walked-hours';
import type { Plan } from '../plan';
import { storesOf } from './stores-of';

/** How long the route advised lasts on what is there: by its fuel, or counted hour by hour. Null where no end is seen. */
export function lastingHours(plan: Plan): Figure | null {
  const { hours, how } = plan.advice.route.lasting;
  const byRule = hours === null || hours.made !== undefined || how.code === 'vehicle-away';
  const counted = byRule ? null : countedBy(plan);
  return counted === null ? hours : { ...hours!, source: { ...hours!.source, counted } };
}

/** As the route's own kind counts its hours; null where it counts none. */
export function countedBy({ advice: { route }, home, weatherYears }: Plan): Counted | null {
  const stores = storesOf(route);
  const traits = traitsOf[route.kind];
  if (route.usableKwh === null) return null;
  if (isPack(traits) || traits.vehicle) return { code: 'middle-hour', stores };
  if (!hasFixedBattery(traits)) return null;
  const { years, every } =
    route.generator === null ? { years: weatherYears, every: 1 } : sampledHours(weatherYears);
  return { code: 'middle-start', starts: startsIn(hardestSeason(home), years, every), stores };
}

/** How long the health devices alone are covered by the route advised; null where none is, or none was named. */
export function deviceHours({ advice, healthFirst, home, weatherYears }: Plan): Figure | null {
  const covered = healthFirst?.covered ?? null;
  if (covered === null) return null;
  const starts = startsIn(hardestSeason(home), weatherYears, MEANS_EVERY_HOURS);
  const counted = { code: 'middle-start', starts, stores: storesOf(advice.route) } as const;
  return figure({
    value: covered.likelyHours,
    low: Math.min(covered.likelyHours, covered.carefulHours),
    unit: 'h',
    source: { kind: 'formula', counted, ends: 'careful-count' },
  });
}

const startsIn = (season: keyof typeof monthsOf, years: number, every: number) =>
  everyNthStart(years * HOURS_PER_YEAR, monthsOf[season], every).length;
