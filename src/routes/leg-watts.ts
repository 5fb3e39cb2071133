import { runsIn } from '../home/demand';
import type { Load, Season } from '../home/home';
import { shareOverLegs } from '../physics/service-load/share-over-legs';

/**
 * Running power on the busier half of a 120/240 V source, W, likely values: the 120 V loads shared over both halves as
 * evenly as can be, half of each 240 V load on each. In the hardest of these seasons.
 */
export function busierLegWatts(loads: readonly Load[], seasonsOfGoal: readonly Season[]): number {
  return Math.max(0, ...seasonsOfGoal.map((season) => inSeason(loads, season)));
}

function inSeason(loads: readonly Load[], season: Season): number {
  const on = loads.filter((load) => !load.offInOutage && runsIn(load, season));
  const watts = (of: readonly Load[]) => of.reduce((sum, l) => sum + l.runningWatts.value, 0);
  const small = on
    .filter((load) => load.volts === 120)
    .map((load) => ({ amps: load.runningWatts.value / 120, load }));
  const { legA, legB } = shareOverLegs(small);
  const on120 = (leg: typeof legA) => watts(leg.map((one) => one.load));
  return Math.max(on120(legA), on120(legB)) + watts(on.filter((load) => load.volts === 240)) / 2;
}
