import { MONTH_DAYS } from '../../physics/weather/calendar';
import type { Load } from '../home';
import type { ClimateHours } from '../weather/climate-hours';
import { type BillYear, DEGREE_DAY_CITE, type WeatherPart } from './bill-year';
import {
  believed,
  type Calibration,
  type CalibrationFinding,
  LEAST_KWH,
  type PartFinding,
  scaledBy,
  type WeatherUse,
} from './calibration';

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
export function calibrateByYear(given: {
  loads: readonly Load[];
  hours: ClimateHours;
  billYear: BillYear;
}): Calibration {
  const { loads, billYear } = given;
  const { fit } = billYear;
  const none = (finding: CalibrationFinding): Calibration => ({ loads: [...loads], finding });
  if (fit === null) return none({ code: 'no-use' });
  const missShare = fit.cvRmse;
  if (missShare > MOST_CV_RMSE)
    return none({ code: 'not-the-weather', missShare, mostShare: MOST_CV_RMSE });
  const { heating, cooling } = billYear;
  return {
    loads: loads.map((load) => scaledByParts(load, billYear, given.hours)),
    finding: {
      code: 'twelve-bills',
      yearKwh: sum(billYear.kwhPerDay.map((kwh, month) => kwh * MONTH_DAYS[month]!)),
      basePerDay: fit.baseKwhPerDay,
      heatingKwh: heating.billedKwh,
      coolingKwh: cooling.billedKwh,
      missShare,
      roughOver: missShare > GOOD_CV_RMSE ? GOOD_CV_RMSE : null,
      parts: [...partFinding('heating', heating), ...partFinding('cooling', cooling)],
    },
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

function partFinding(what: WeatherUse, part: WeatherPart): PartFinding[] {
  const factor = factorOf(part);
  const code = factor !== 1 ? 'by-the-bills' : whyNotScaled(part);
  return code === null ? [] : [{ code, what, countedKwh: part.countedKwh, factor }];
}

/** Why a part stands as it was counted; null where there is nothing to tell. */
function whyNotScaled(part: WeatherPart): PartFinding['code'] | null {
  const { billedKwh, countedKwh, countedTop } = part;
  if (countedTop < LEAST_KWH) return standsOut(part) ? 'little-named' : null;
  // What we count would show in the bills, and it does not: that is no scatter.
  const shows = standsOut({ ...part, billedTop: Math.max(part.billedTop, countedTop) });
  return shows && !believed(billedKwh / countedKwh) ? 'too-far' : 'too-near';
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
  return scaledBy(load, by, 'twelve', DEGREE_DAY_CITE);
}

const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0);
