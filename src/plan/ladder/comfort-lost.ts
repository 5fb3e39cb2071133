import { COOL_OUTDOORS_F, warmOtherwise } from '../../home/heat/warm-otherwise';
import type { Home, Load } from '../../home/home';
import type { Route } from '../../routes/route';

/** Outdoor heat, F, at which a home without cooling can harm (National Weather Service caution from 90 F). */
const HOT_OUTDOORS_F = 90;

/** Heat or cooling a home goes without in an outage, by the ids of the loads it would take, or `building`. */
export interface ComfortLost {
  readonly heat: readonly string[];
  readonly cool: readonly string[];
}

/**
 * What this route leaves cold or hot, in the seasons asked for and where the outdoors makes that harm:
 * told to run or not, what nobody carries gives no heat. One heater or room unit that is carried is enough.
 */
export function comfortLost(home: Home, route: Pick<Route, 'carries'>): ComfortLost {
  const carried = (load: Load) => route.carries.includes(load.id);
  const missing = (loads: readonly Load[]) =>
    loads.some(carried) ? [] : loads.map((load) => load.id);
  const heaters = home.loads.filter((load) => load.restsOn.includes('heat-main'));
  const coolers = home.loads.filter(
    (load) => ['heat', 'both'].includes(load.follows) && load.rank !== 'wait',
  );
  // Strips beside a heat pump are no loss of heat, nor is what one warm room makes needless.
  const inUse = heaters.filter((load) => !load.offInOutage);
  const main = inUse.length > 0 ? inUse : heaters;
  const told = (id: 'heat-main' | 'cool-main') => home.facts.told(id);
  const building = home.facts.is('heat-main', 'building') ? ['building'] : [];
  const cold = home.goalSeasons.includes('winter') && home.site.coldF < COOL_OUTDOORS_F;
  const hot = home.goalSeasons.includes('summer') && home.site.hotF >= HOT_OUTDOORS_F;
  return {
    heat:
      cold && told('heat-main') && !warmOtherwise(home.facts)
        ? [...missing(main), ...building]
        : [],
    cool: hot && (told('cool-main') || told('heat-main')) ? missing(coolers) : [],
  };
}
