import type { Home, Season } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import type { Figure } from '../../quantity/figure';
import type { Route } from '../../routes/route';
import type { SizedKind } from '../../routes/sized';
import { neighborsOf } from '../ride-through/neighbors';
import { hoursAtSize } from './hours-at-size';

/** The advised route one step smaller or larger. */
export type SizeBeside =
  /** A whole route of another battery. */
  | { readonly code: 'route'; readonly route: Route }
  /** A generator one step beside: its price, odds and hours are counted. */
  | {
      readonly code: 'step';
      readonly costUsd: Figure;
      /** The route with that generator, for its hours; null where it does not run or start what must run, and beside a battery. */
      readonly atSize: Route | null;
      readonly odds: number | null;
      /** With its cans filled; null where none are to be filled. */
      readonly oddsOnceStored: number | null;
    };

/** Null where it comes in no smaller or larger size here. */
export function sizeBeside(
  home: Home,
  drawn: SyntheticYears,
  sized: SizedKind,
  { route, season, step }: { route: Route; season: Season; step: -1 | 1 },
): SizeBeside | null {
  const battery = batteryBeside(sized, route, step);
  if (battery !== null) return { code: 'route', route: battery };
  if (route.generator === null) return null;
  const beside = neighborsOf(livedHome(home, route.way), drawn, route, season)
    .filter(({ nameplateKwh }) => nameplateKwh === route.nameplateKwh)
    .find(({ costUsd }) => Math.sign(costUsd.value - route.costUsd.value) === step);
  if (beside === undefined) return null;
  const { costUsd, odds, oddsOnceStored = null } = beside;
  const { step: to } = beside;
  const atSize = odds === null || to.code !== 'generator' ? null : hoursAtSize(home, route, to.kw);
  return { code: 'step', costUsd, atSize, odds, oddsOnceStored };
}

/** The next battery of the same kind with the same panels. */
function batteryBeside(sized: SizedKind, route: Route, step: -1 | 1): Route | null {
  const now = route.usableKwh;
  if (now === null) return null;
  const others = sized
    .sizes()
    .filter((one) => one.route.solarKw === route.solarKw)
    .filter((one) => Math.sign((one.route.usableKwh ?? now) - now) === step)
    .sort(
      (a, b) =>
        Math.abs(a.route.usableKwh! - now) - Math.abs(b.route.usableKwh! - now) ||
        a.route.costUsd.value - b.route.costUsd.value,
    );
  return others[0]?.whole() ?? null;
}
