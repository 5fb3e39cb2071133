import { BALANCE_C } from '../../home/heat/heat-need';
import type { Home, Load } from '../../home/home';
import { hardDaysC } from '../../home/weather/climate-hours';
import { type Figure, figure } from '../../quantity/figure';
import { addFigures, formula } from '../../quantity/figure-arithmetic';
import { fuelHeat, type GeneratorFuel } from '../../tables/fuels';
import { practiceRange } from '../../tables/practice-figures';
import type { Note, PropaneUse } from '../note';
import type { FuelUse } from '../route';

function ends(id: Parameters<typeof practiceRange>[0]) {
  const { low, likely: value, high } = practiceRange(id);
  return { low, value, high };
}

/**
 * Fuel a house burns for heat, Btu a square foot and degree day below 65 F, from a tight house to a drafty one: the
 * heating index of weatherizing crews.
 */
const HEATING_INDEX = ends('house-heating-index');
/** A water heater with its pilot, gal a person and day; a stove, gal a day. */
const HOT_WATER_GAL = ends('propane-hot-water');
const COOKING_GAL = ends('propane-cooking');
/** A house whose size nobody told, sq ft: from a small one to a large one, so that the tank is counted shorter by the careful end. */
const USUAL_SQFT = ends('usual-floor-area');

/**
 * Gallons a day that the house itself burns from the propane tank while this generator runs what it carries: a furnace
 * or boiler only where it has power, a heater that needs none, a water heater and a stove in any case. What nobody told is
 * counted by its careful end: fewer hours.
 *
 *   heat: index x floor area x degree days of a hard winter day / heat of a gallon
 */
function propaneBeside(home: Home, carried: readonly Load[]) {
  const parts = [...heat(home, carried), ...hotWater(home, carried), ...cooking(home)];
  const besidePerDay = addFigures(
    parts.map(({ perDay }) => perDay),
    { unit: 'gal/day', is: 'propane-of-house' },
  );
  return { besidePerDay, besideFor: parts.map(({ use }) => use) };
}

/** The same as part of a wish for fuel: nothing unless this generator burns from the house tank. */
export function fromSameTank(home: Home, fuel: GeneratorFuel, carried: readonly Load[]) {
  return fuel === 'propane' && home.facts.is('gas-supply', 'propane-tank')
    ? propaneBeside(home, carried)
    : {};
}

/** Says what the house takes of the tank, where it takes any. */
export function sharedTankNotes({ tank, besidePerDay, besideFor = [] }: FuelUse): Note[] {
  if (tank === undefined || besidePerDay === undefined) return [];
  return [{ code: 'shared-tank', gallons: tank.value, housePerDay: besidePerDay, uses: besideFor }];
}

function heat(home: Home, carried: readonly Load[]): Burned[] {
  const { facts, site } = home;
  const powered =
    facts.is('heat-main', 'gas-furnace', 'boiler') &&
    carried.some(({ id }) => id === 'furnace-gas' || id === 'boiler');
  const flame = facts.is('heat-main', 'gas-no-power') || facts.is('heat-second', 'vented-gas');
  if (!home.goalSeasons.includes('winter') || !(powered || flame)) return [];
  const { hardCold } = hardDaysC(site.place.climate);
  const degreeDaysF = 1.8 * Math.max(0, BALANCE_C - hardCold);
  const told = facts.told('home-area') ? facts.number('home-area') : null;
  const { higherBtu } = fuelHeat.rows.find((row) => row.fuel === 'propane')!;
  const gallons: EndOf = (end) =>
    (HEATING_INDEX[end] * (told ?? USUAL_SQFT[end]) * degreeDaysF) / higherBtu;
  return [burned('heat', gallons)];
}

function hotWater(home: Home, carried: readonly Load[]): Burned[] {
  const { facts, people } = home;
  const powered = carried.some(({ id }) => id === 'water-heater');
  const burns =
    facts.is('water-heater', 'gas-pilot') ||
    (facts.is('water-heater', 'gas-plug', 'tankless-gas') && powered);
  return burnedIf(burns, facts.open('water-heater'), 'hot-water', (end) => {
    return HOT_WATER_GAL[end] * people[end];
  });
}

function cooking({ facts }: Home): Burned[] {
  const burns = facts.is('cook-main', 'gas');
  return burnedIf(burns, facts.open('cook-main'), 'cooking', (end) => COOKING_GAL[end]);
}

/** Where nobody told whether it burns propane, the high end counts that it does. */
function burnedIf(burns: boolean, open: boolean, use: PropaneUse, gallons: EndOf): Burned[] {
  if (burns) return [burned(use, gallons)];
  return open ? [burned(use, (end) => (end === 'high' ? gallons('high') : 0))] : [];
}

type EndOf = (end: 'low' | 'value' | 'high') => number;

/** What the house burns propane for, and how much. */
interface Burned {
  readonly use: PropaneUse;
  /** gal a day: for heat, of a hard winter day. */
  readonly perDay: Figure;
}

function burned(use: PropaneUse, gallons: EndOf): Burned {
  const perDay = figure({
    value: gallons('value'),
    low: gallons('low'),
    high: gallons('high'),
    unit: 'gal/day',
    is: { code: 'propane-for', use },
    source: formula({ code: 'from-same-tank', use }, [], ['common-practice-no-source']),
  });
  return { use, perDay };
}
