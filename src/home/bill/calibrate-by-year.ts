import { MONTH_DAYS } from '../../physics/weather/calendar';
import type { Load } from '../home';
import type { ClimateHours } from '../weather/climate-hours';
import { type BillYear, DEGREE_DAY_CITE, type WeatherPart } from './bill-year';
import { believed, type Calibration, LEAST_KWH, scaledBy } from './calibration';

/** Months may miss by so much where their own weather is known: ASHRAE Guideline 14-2014, CV(RMSE). Seen second-hand. */
const GOOD_CV_RMSE = 0.15;
/**
 * We know only the usual weather. Of homes with heating or cooling in single years of our own drawn weather, 1 in 50
 * misses by more than this; what misses by more is taken for something else. Our judgement.
 */
const MOST_CV_RMSE = 0.25;
/** A part has to stand out of the misfit so many times in its strongest month: below, drawn years gave half or double. */
const OVER_MISFIT = 3;

/**
 * Set heating and cooling to what twelve bills show: base, heating and cooling by least squares on the usual weather of
 * the place, and each part's year over the year that the answers would have come to. Loads that do not follow the
 * weather stand as they were told, for an outage asks what a label says; money and checks take the months themselves.
 */
export function calibrateByYear(of: {
  loads: readonly Load[];
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
      `Your twelve months do not follow the weather of your place: they miss a fit by ${off}, and from ${100 * MOST_CV_RMSE} % on we do not go by one. Check the order of the months, and think of months away, guests or a new car. Heating and cooling were not changed; the money follows the months as they are.`,
    );
  }
  const { heating, cooling } = billYear;
  const year = sum(billYear.kwhPerDay.map((kwh, month) => kwh * MONTH_DAYS[month]!));
  const split = `Your twelve bills come to ${whole(year)} kWh a year. By the usual weather of your place that is ${fit.baseKwhPerDay.toFixed(1)} kWh a day in any weather, ${whole(heating.billedKwh)} kWh a year that go with cold and ${whole(cooling.billedKwh)} kWh that go with heat; the months miss this by ${off}.`;
  const rough =
    fit.cvRmse > GOOD_CV_RMSE
      ? [
          `That is more than the ${100 * GOOD_CV_RMSE} % of a good fit: the year was unusual, or something else changed.`,
        ]
      : [];
  const parts = [...sayPart('heating', heating), ...sayPart('cooling', cooling)];
  return {
    loads: loads.map((load) => scaledByParts(load, billYear, of.hours)),
    says: [split, ...rough, ...parts].join(' '),
  };
}

/** What to multiply a part by; 1 where it is too small to tell or too far off to believe. */
function factorOf(part: WeatherPart): number {
  const { countedTop, billedKwh, countedKwh } = part;
  if (countedTop < LEAST_KWH || !(countedKwh > 0) || !standsOut(part)) return 1;
  return believed(billedKwh / countedKwh) ? billedKwh / countedKwh : 1;
}

function standsOut({ billedTop, misfitKwh }: WeatherPart): boolean {
  return billedTop >= LEAST_KWH && billedTop >= OVER_MISFIT * misfitKwh;
}

function sayPart(what: 'heating' | 'cooling', part: WeatherPart): string[] {
  const { billedKwh, countedKwh, countedTop } = part;
  const factor = factorOf(part);
  if (factor !== 1) {
    return [
      `We would have counted ${whole(countedKwh)} kWh a year for ${what}: the plan goes by your bills, and ${what} counts ${factor.toFixed(2)} times as much as it would have.`,
    ];
  }
  if (countedTop >= LEAST_KWH) {
    // What we count would show in the bills, and it does not: that is no scatter.
    const shows = standsOut({ ...part, billedTop: Math.max(part.billedTop, countedTop) });
    return shows && !believed(billedKwh / countedKwh)
      ? [
          `We would have counted ${whole(countedKwh)} kWh a year for ${what}, too far from the bills to go by them: check the kind and size of the ${what}. Nothing was changed there.`,
        ]
      : [
          `We would have counted ${whole(countedKwh)} kWh a year for ${what}; what the bills show of it is too near to that, or too small beside what they miss by, to change it.`,
        ];
  }
  if (standsOut(part)) {
    return [
      `The answers name little that uses power for ${what}: look for ${what === 'heating' ? 'space heaters or hot water' : 'coolers, fans or pumps'} that were not named.`,
    ];
  }
  return [];
}

/** Winter days by the heating, summer days by the cooling, a mild day by what it has of each. */
function scaledByParts(load: Load, { heating, cooling }: BillYear, hours: ClimateHours): Load {
  const [heat, cool] = [factorOf(heating), factorOf(cooling)];
  const heats = ['cold', 'both'].includes(load.follows);
  const cools = ['heat', 'both'].includes(load.follows);
  if (!heats && !cools) return load;
  const [warmed, cooled] = [heats ? hours.heating.mild[1] : 0, cools ? hours.cooling.mild[1] : 0];
  const all = warmed + cooled;
  const mild = all > 0 ? (heat * warmed + cool * cooled) / all : heats ? heat : cool;
  const by = { winter: heats ? heat : 1, summer: cools ? cool : 1, mild };
  return scaledBy(load, by, { label: 'set by your twelve bills', cite: DEGREE_DAY_CITE });
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
const whole = (kwh: number) => Math.round(kwh).toLocaleString('en-US');
