import { MONTH_DAYS } from '../physics/weather/calendar';
import type { Climate } from '../tables/climate';
import { type BillYear, DEGREE_DAY_CITE } from './bill-year';
import { believed, type Calibration, LEAST_KWH, scaledBy } from './calibration';
import type { ClimateHours } from './climate-hours';
import { BALANCE_C } from './heat-need';
import type { Load } from './home';
import { monthDegrees, monthMeans } from './usual-hours';
import { weatherLoadKw } from './weather-load';

/** Months of a calibrated model may miss by so much: ASHRAE Guideline 14-2014, monthly CV(RMSE). Seen second-hand. */
const MOST_CV_RMSE = 0.15;

/** Heating or cooling as the bills show it and as the answers count it. */
interface Part {
  readonly what: 'heating' | 'cooling';
  readonly billedKwh: number;
  readonly countedKwh: number;
  /** The larger of the two on a usual day of the month that has most of it, kWh. */
  readonly billedTop: number;
  readonly countedTop: number;
}

/**
 * Set heating and cooling to what twelve bills show: base, heating and cooling by least squares on the degree days of
 * the place, and each part's year over the year that the answers would have come to. Loads that do not follow the
 * weather stand as they were told, for an outage asks what a label says; money and checks take the months themselves.
 */
export function calibrateByYear(of: {
  loads: readonly Load[];
  climate: Climate;
  hours: ClimateHours;
  billYear: BillYear;
}): Calibration {
  const { loads, billYear } = of;
  const { fit } = billYear;
  const none = (says: string): Calibration => ({ loads: [...loads], says });
  if (fit === null) return none('The twelve bills show no use at all, so nothing goes by them.');
  const off = `${Math.round(100 * fit.cvRmse)} %`;
  if (fit.cvRmse > MOST_CV_RMSE) {
    return none(
      `Your twelve months do not follow the weather of your place: they miss by ${off}, and ${100 * MOST_CV_RMSE} % is the most for a fit to be used. Check the order of the months, and think of months away, guests or a new car. Heating and cooling were not changed; the money follows the months as they are.`,
    );
  }
  const parts = [heatingOf(of), coolingOf(of)];
  const year = sum(billYear.kwhPerDay.map((kwh, month) => kwh * MONTH_DAYS[month]!));
  const split = `Your twelve bills come to ${whole(year)} kWh a year. By the usual degree days of your place that is ${fit.baseKwhPerDay.toFixed(1)} kWh a day in any weather, ${whole(billYear.heatingKwh)} kWh a year that go with cold and ${whole(billYear.coolingKwh)} kWh that go with heat; the months miss this by ${off}.`;
  return {
    loads: loads.map((load) => scaledByParts(load, parts, of.hours)),
    says: [split, ...parts.flatMap(sayPart)].join(' '),
  };
}

/** What to multiply a part by; 1 where it is too small to tell or too far off to believe. */
function factorOf({ billedTop, countedTop, billedKwh, countedKwh }: Part): number {
  if (countedTop < LEAST_KWH || !(countedKwh > 0)) return 1;
  const factor = billedKwh / countedKwh;
  return believed(factor) && billedTop >= LEAST_KWH ? factor : 1;
}

function sayPart(part: Part): string[] {
  const { what, billedKwh, countedKwh, billedTop, countedTop } = part;
  const factor = factorOf(part);
  if (factor !== 1) {
    return [
      `We would have counted ${whole(countedKwh)} kWh a year for ${what}: the plan goes by your bills, and ${what} counts ${factor.toFixed(2)} times as much as it would have.`,
    ];
  }
  if (countedTop >= LEAST_KWH && !believed(billedKwh / countedKwh)) {
    return [
      `We would have counted ${whole(countedKwh)} kWh a year for ${what}, too far from the bills to go by them: check the kind and size of the ${what}. Nothing was changed there.`,
    ];
  }
  if (billedTop >= LEAST_KWH && countedTop < LEAST_KWH) {
    return [
      `The answers name little that uses power for ${what}: look for ${what === 'heating' ? 'space heaters or hot water' : 'coolers, fans or pumps'} that were not named.`,
    ];
  }
  return [];
}

function heatingOf(of: Parameters<typeof calibrateByYear>[0]): Part {
  const { loads, climate, billYear } = of;
  const kw = weatherLoadKw(loads, climate);
  const counted = monthMeans(climate, (airC) => (airC < BALANCE_C ? 24 * kw(airC) : 0));
  const slope = billYear.fit?.kwhPerHeatingK ?? 0;
  return partOf('heating', billYear.heatingKwh, counted, monthDegrees(climate).heatingK, slope);
}

function coolingOf(of: Parameters<typeof calibrateByYear>[0]): Part {
  const { loads, climate, billYear } = of;
  const kw = weatherLoadKw(loads, climate);
  const counted = monthMeans(climate, (airC) => (airC > BALANCE_C ? 24 * kw(airC) : 0));
  const slope = billYear.fit?.kwhPerCoolingK ?? 0;
  return partOf('cooling', billYear.coolingKwh, counted, monthDegrees(climate).coolingK, slope);
}

function partOf(
  what: Part['what'],
  billedKwh: number,
  counted: readonly number[],
  degrees: readonly number[],
  slope: number,
): Part {
  return {
    what,
    billedKwh,
    countedKwh: sum(counted.map((kwh, month) => kwh * MONTH_DAYS[month]!)),
    billedTop: slope * Math.max(...degrees),
    countedTop: Math.max(...counted),
  };
}

/** Winter days by the heating, summer days by the cooling, a mild day by what it has of each. */
function scaledByParts(load: Load, parts: readonly Part[], hours: ClimateHours): Load {
  const [heat, cool] = parts.map(factorOf);
  const heats = ['cold', 'both'].includes(load.follows);
  const cools = ['heat', 'both'].includes(load.follows);
  if (!heats && !cools) return load;
  const [warmed, cooled] = [heats ? hours.heating.mild[1] : 0, cools ? hours.cooling.mild[1] : 0];
  const all = warmed + cooled;
  const mild = all > 0 ? (heat! * warmed + cool! * cooled) / all : heats ? heat! : cool!;
  const by = { winter: heats ? heat! : 1, summer: cools ? cool! : 1, mild };
  return scaledBy(load, by, { label: 'set by your twelve bills', cite: DEGREE_DAY_CITE });
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
const whole = (kwh: number) => Math.round(kwh).toLocaleString('en-US');
