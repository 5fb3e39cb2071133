import { loadsIn } from '../../advice/ride/route-loads';
import { MEANS_EVERY_HOURS } from '../../advice/ride/sampled-starts';
import { walkableOf } from '../../advice/ride/walkable';
import { walkedShare } from '../../advice/ride/walked-odds';
import type { Home, Season } from '../../home/home';
import { vehicleOf } from '../../home/vehicle';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { SAMPLE_EVERY_HOURS } from '../../outage/walk/sampled-odds';
import type { WalkSystem } from '../../outage/walk/system';
import type { Route } from '../../routes/route';
import type { OtherUse, Variant } from './ride-through';

/** The same route used otherwise: with refills as the household expects them, with the vehicle kept at home or filled. */
export function variantsOf(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): Variant[] {
  const classes = [loadsIn(home, route, 'must') ?? []];
  const goal = Math.round(home.goalHours.value);
  const waysBy = (careful: boolean) => {
    const way = walkableOf(home, drawn, route, { classes, season, careful });
    return otherwise(home, way.system).map(({ use, system }) => ({
      use,
      way: { ...way, system },
    }));
  };
  const likely = waysBy(false);
  if (likely.length === 0) return [];
  const careful = waysBy(true);
  return likely.map(({ use, way }, i) => ({
    use,
    ...walkedShare(way, goal, SAMPLE_EVERY_HOURS),
    carefulShare: walkedShare(careful[i]!.way, goal, MEANS_EVERY_HOURS).share,
  }));
}

/** Share of outages of the goal's length with the refill the household expects; null where none is expected in time. */
export function refilledShare(
  home: Home,
  drawn: SyntheticYears,
  route: Route,
  season: Season,
): number | null {
  const classes = [loadsIn(home, route, 'must') ?? []];
  const way = walkableOf(home, drawn, route, { classes, season, careful: false });
  const [refill] = refilled(home, way.system);
  if (refill === undefined) return null;
  const goal = Math.round(home.goalHours.value);
  return walkedShare({ ...way, system: refill.system }, goal, SAMPLE_EVERY_HOURS).share;
}

interface Otherwise {
  readonly use: OtherUse;
  readonly system: WalkSystem;
}

const otherwise = (home: Home, system: WalkSystem) => [
  ...refilled(home, system),
  ...vehicleKept(home, system),
];

/** Only where the household said it could have more; the plan itself never leans on it. */
function refilled({ facts, goalHours }: Home, system: WalkSystem): Otherwise[] {
  const { generator } = system;
  if (generator === null || !Number.isFinite(generator.fuelAtStart)) return [];
  if (!facts.told('fuel-refill') || !facts.is('fuel-refill', 'sure', 'likely')) return [];
  const days = facts.number('fuel-refill-days');
  // A refill that comes when the goal is over changes nothing.
  if (days === null || 24 * days >= goalHours.value) return [];
  return [
    {
      use: {
        code: 'refilled',
        everyHours: 24 * days,
        sure: facts.is('fuel-refill', 'sure'),
      },
      system: {
        ...system,
        generator: {
          ...generator,
          refill: generator.fuelAtStart,
          refillEveryHours: Math.max(1, Math.round(24 * days)),
        },
      },
    },
  ];
}

function vehicleKept({ facts }: Home, system: WalkSystem): Otherwise[] {
  const { vehicle } = system;
  const own = vehicleOf(facts);
  if (vehicle === null || own === null) return [];
  const homeByHour = own.homeByHour.map(() => 1);
  const away = own.homeByHour.includes(0);
  const full = { ...vehicle, homeByHour, storeKwh: own.fullStoreKwh };
  return [
    ...(away
      ? [
          {
            use: { code: 'vehicle-stays-home' as const },
            system: { ...system, vehicle: { ...vehicle, homeByHour } },
          },
        ]
      : []),
    {
      use: { code: 'vehicle-charged-full' },
      system: { ...system, vehicle: full },
    },
  ];
}
