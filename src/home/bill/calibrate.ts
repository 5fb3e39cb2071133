import type { Facts } from '../facts';
import type { Load } from '../home';
import { type ClimateHours, usualShareOf } from '../weather/climate-hours';
import type { BillYear } from './bill-year';
import { calibrateByYear } from './calibrate-by-year';
import {
  believed,
  type Calibration,
  type CalibrationFinding,
  LEAST_KWH,
  scaledBy,
} from './calibration';

/** What loads are held against bills with. */
export interface CalibrationOf {
  readonly facts: Facts;
  readonly loads: readonly Load[];
  readonly hours: ClimateHours;
  /** The twelve bills, where they were told. */
  readonly billYear: BillYear | null;
}

/** Set heating and cooling by the bills told: by twelve where there are twelve, else by two, else not at all. */
export function calibrate(given: CalibrationOf): Calibration {
  return given.billYear === null
    ? calibrateByTwo(given)
    : calibrateByYear({ ...given, billYear: given.billYear });
}

/** Days in the month of a bill, as far as a yearly mean goes. */
const DAYS = 365 / 12;

/**
 * Set heating or cooling to what two bills show: the month of the feared season less a mild month is what the weather
 * took. Applied only when that difference is large enough and the factor is believable; said either way.
 *
 *   factor = (bill_season - bill_mild) / (usual day of the season - mild day, of what follows the weather)
 */
function calibrateByTwo({ facts, loads, hours }: CalibrationOf): Calibration {
  const none = (finding: CalibrationFinding | null): Calibration => ({
    loads: [...loads],
    finding,
  });
  const season = facts.value('bill-season');
  const told = facts.told('bill-kwh') && facts.told('bill-mild-kwh');
  if (!told || (season !== 'winter' && season !== 'summer')) return none(null);
  const billed = (facts.number('bill-kwh')! - facts.number('bill-mild-kwh')!) / DAYS;
  const follows = season === 'winter' ? ['cold', 'both'] : ['heat', 'both'];
  const weathered = loads.filter((load) => follows.includes(load.follows));
  const usual = (load: Load) => load.kwhPerDay[season].value * usualShareOf(load, season, hours);
  const counted = weathered.reduce((sum, load) => sum + usual(load) - load.kwhPerDay.mild.value, 0);
  const what = season === 'winter' ? 'heating' : 'cooling';
  if (counted < LEAST_KWH || billed < LEAST_KWH) return none(null);
  const factor = billed / counted;
  const found = { what, season, billedPerDay: billed, countedPerDay: counted, factor } as const;
  if (!believed(factor)) return none({ code: 'two-bills-too-far', ...found });
  const by = { winter: factor, summer: factor, mild: factor };
  const scaled = loads.map((load) => (weathered.includes(load) ? scaledBy(load, by, 'two') : load));
  return { loads: scaled, finding: { code: 'two-bills', ...found } };
}
