import type { Home, Load } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import type { Route } from '../../routes/route';
import type { Finding } from '../../rules/rule';
import { type EquipmentClass, equipmentCost } from '../../tables/prices/equipment-costs';
import type { RuleId } from '../../tables/rules';

/** What of the table of costs may be advised beside a route. */
export type AddOnId = Extract<EquipmentClass, 'sump-battery' | 'room-heater' | 'room-cooler'>;

/** Something worth having beside the route advised; its price is in neither the route's nor the money table's sum. */
export interface AddOn {
  readonly id: AddOnId;
  readonly usdLow: number;
  readonly usdLikely: number;
  readonly usdHigh: number;
  readonly year: number;
}

/** A caution that advises to buy something: works when nobody is home, and when the first source rests or fails. */
const bought: readonly { caution: RuleId; buys: AddOnId }[] = [
  { caution: 'sump-own-battery', buys: 'sump-battery' },
];

/** A unit for the one room that is kept warm or cool; a household that has one already buys none. */
const roomUnits: readonly { load: LoadId; buys: AddOnId }[] = [
  { load: 'room-heater', buys: 'room-heater' },
  { load: 'room-cooler', buys: 'room-cooler' },
];

/** The sums of the plan count on it: without it the one room is neither warm nor cool. */
export const isCountedOn = ({ id }: AddOn): boolean => roomUnits.some(({ buys }) => buys === id);

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
    .map(({ buys }) => {
      const { low, likely, high, year } = equipmentCost(buys);
      return { id: buys, usdLow: low, usdLikely: likely, usdHigh: high, year };
    });
}
