import { timesFigure } from '../quantity/figure-arithmetic';
import { type ClimateHours, usualShareOf } from './climate-hours';
import type { Facts } from './facts';
import type { Load } from './home';

/** What two bills say about heating or cooling; the plan prints it, so that nothing is scaled in silence. */
export interface Calibration {
  readonly loads: Load[];
  /** Factor applied to what follows the weather; null when nothing was applied. */
  readonly factor: number | null;
  readonly says: string | null;
}

/** Days in the month of a bill, as far as a yearly mean goes. */
const DAYS = 365 / 12;
/** Less difference than this a day tells more of habits than of the weather, kWh. Our judgement. */
const LEAST_KWH = 4;
/** Outside this the bills and the answers do not speak of the same home. Our judgement. */
const BELIEVED = { low: 0.4, high: 2.5 };

/**
 * Set heating or cooling to what two bills show: the month of the feared season less a mild month is what the weather
 * took. Applied only when that difference is large enough and the factor is believable; said either way.
 *
 *   factor = (bill_season - bill_mild) / (usual day of the season - mild day, of what follows the weather)
 */
export function calibrate(
  facts: Facts,
  loads: readonly Load[],
  climate: ClimateHours,
): Calibration {
  const none = (says: string | null): Calibration => ({ loads: [...loads], factor: null, says });
  const season = facts.value('bill-season');
  const told = facts.told('bill-kwh') && facts.told('bill-mild-kwh');
  if (!told || (season !== 'winter' && season !== 'summer')) return none(null);
  const billed = (facts.number('bill-kwh')! - facts.number('bill-mild-kwh')!) / DAYS;
  const follows = season === 'winter' ? ['cold', 'both'] : ['heat', 'both'];
  const weathered = loads.filter((load) => follows.includes(load.follows));
  const usual = (load: Load) => load.kwhPerDay[season].value * usualShareOf(load, season, climate);
  const counted = weathered.reduce((sum, load) => sum + usual(load) - load.kwhPerDay.mild.value, 0);
  const what = season === 'winter' ? 'heating' : 'cooling';
  if (counted < LEAST_KWH || billed < LEAST_KWH) return none(null);
  const factor = billed / counted;
  const both = `Your two bills show ${billed.toFixed(1)} kWh a day more in ${season} than in a mild month; we would have counted ${counted.toFixed(1)} kWh a day for ${what}.`;
  if (factor < BELIEVED.low || factor > BELIEVED.high) {
    return none(
      `${both} They are too far apart to go by the bills: check the kind and size of the ${what}. Nothing was changed.`,
    );
  }
  const scaled = loads.map((load) => (weathered.includes(load) ? scaledBy(load, factor) : load));
  return {
    loads: scaled,
    factor,
    says: `${both} The plan goes by your bills: ${what} counts ${factor.toFixed(2)} times as much as it would have.`,
  };
}

function scaledBy(load: Load, factor: number): Load {
  const source = { kind: 'told', label: `set by your two bills, x ${factor.toFixed(2)}` } as const;
  const { winter, summer, mild } = load.kwhPerDay;
  const by = { low: Math.min(1, factor), likely: factor, high: Math.max(1, factor) };
  return {
    ...load,
    kwhPerDay: {
      winter: timesFigure(winter, by, { source }),
      summer: timesFigure(summer, by, { source }),
      mild: timesFigure(mild, by, { source }),
    },
  };
}
