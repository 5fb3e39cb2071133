import type { Load, Season, Way } from '../../home/home';
import type { RouteKind } from '../../kinds/route-kind';
import { traitsOf } from '../../kinds/route-traits';

/**
 * Hours of the day in which a generator runs, 1 or 0 by hour: as it is planned; thriftily one that is started by hand
 * runs only while something is on, for its idle burn is most of its fuel.
 */
export function runHours(
  { kind, way }: { kind: RouteKind; way: Way },
  loads: readonly Load[],
  season: Season,
  planned: readonly number[],
): readonly number[] {
  const { byHand, battery } = traitsOf[kind];
  if (way === 'usual' || !byHand || battery !== 'none') return planned;
  return planned.map((runs, hour) =>
    loads.some((load) => load.kwhPerDay[season].value * load.shape[hour]! > 0) ? runs : 0,
  );
}
