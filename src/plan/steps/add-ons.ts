import type { Home, Load } from '../../home/home';
import { formatRange } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import type { Finding } from '../../rules/rule';
import { type EquipmentClass, equipmentCost } from '../../tables/equipment-costs';

/** Something worth having beside the route advised; its price is in neither the route's nor the money table's sum. */
export interface AddOn {
  readonly name: string;
  readonly because: string;
  readonly usdLow: number;
  readonly usdLikely: number;
  readonly usdHigh: number;
  readonly year: number;
  /** The price in words. */
  readonly cost: string;
}

/** A caution that advises to buy something, and what it costs. */
const bought: readonly { caution: string; buys: EquipmentClass; because: string }[] = [
  {
    caution: 'sump-own-battery',
    buys: 'sump-battery',
    because:
      'it works when nobody is home, when the generator rests and when the first source fails',
  },
];

/** A unit for the one room that is kept warm or cool; a household that has one already buys none. */
const roomUnits: readonly { load: string; buys: EquipmentClass; because: string }[] = [
  {
    load: 'room-heater',
    buys: 'room-heater',
    because: 'the plan counts on it for the one warm room; you may have one already',
  },
  {
    load: 'room-cooler',
    buys: 'room-cooler',
    because: 'the plan counts on it for the one cool room; you may have one already',
  },
];

/** Told or asked for, and of use in a season the plan is for. */
function isWanted({ facts, goalSeasons }: Home, load: Load): boolean {
  const listed = facts.told('must-run') && load.rank === 'must';
  const nice = facts.told('nice-run') && load.rank !== 'must';
  return (listed || nice) && goalSeasons.some((season) => load.kwhPerDay[season].value > 0);
}

/** What the cautions and the one room advise to buy beside the route, each with a price range of its year. */
export function addOnsOf(home: Home, route: Route, cautions: readonly Finding[]): AddOn[] {
  const pump = home.facts.told('sump') && home.facts.is('sump', 'one');
  const carried = home.loads.filter((load) => route.carries.includes(load.id));
  return [
    ...bought.filter(({ caution }) => pump && cautions.some((one) => one.id === caution)),
    ...roomUnits.filter(({ load }) =>
      carried.some((one) => one.id === load && isWanted(home, one)),
    ),
  ]
    .filter(({ buys }) => route.parts.every((part) => part.equipmentClass !== buys))
    .map(({ buys, because }) => {
      const { name, low, likely, high, year } = equipmentCost(buys);
      const cost = `${formatRange(low, likely, high, '$')}, prices of ${year}`;
      return { name, because, usdLow: low, usdLikely: likely, usdHigh: high, year, cost };
    });
}
