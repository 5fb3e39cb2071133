import { seasonBill } from '../../home/bill/season-bill';
import type { Home } from '../../home/home';
import { hoursTold } from '../money/clock-hours-told';
import { cheapInsidePeak } from '../money/clock-prices';
import type { ClockSpan, Contradiction } from './contradiction';

/** Must-run energy may be so much over the bill before we ask. Our judgement. */
const OVER_BILL = 1.1;

/** What must run comes to more than the meter of the same season shows. */
export function mustRunOverBill(home: Home): Contradiction | null {
  const over = billedSeasons(home).find(
    ({ season, bill }) => home.demand.must.kwhPerDay[season].low > OVER_BILL * bill,
  );
  if (over === undefined) return null;
  const asked =
    home.billYear === null ? (['bill-kwh', 'bill-season'] as const) : (['bill-year-kwh'] as const);
  return {
    id: 'must-run-over-bill',
    mustKwhPerDay: home.demand.must.kwhPerDay[over.season].low,
    billKwhPerDay: over.bill,
    questions: ['must-run', ...asked],
  };
}

/** Winter and summer of twelve bills, or the season of the one; a mild month says nothing of a hard day. */
function billedSeasons(home: Home): { season: 'winter' | 'summer'; bill: number }[] {
  const { billCheck, billYear, site } = home;
  if (billYear !== null) {
    return (['winter', 'summer'] as const).map((season) => ({
      season,
      bill: seasonBill(billYear, site.place.climate, season).value,
    }));
  }
  if (billCheck.verdict === 'not-possible' || billCheck.season === 'mild') return [];
  return [{ season: billCheck.season, bill: billCheck.billKwhPerDay.value }];
}

/** One month's kWh may lie so far outside the twelve before we ask: another year has another weather. Our judgement. */
const OUTSIDE_YEAR = { low: 0.7, high: 1.4 };

/** The one month told and the twelve cannot be of the same home. */
export function monthOutsideYear({ facts }: Home): Contradiction | null {
  const one = facts.told('bill-kwh') ? facts.number('bill-kwh') : null;
  const months = facts.told('bill-year-kwh') ? facts.numbers('bill-year-kwh') : null;
  if (one === null || months === null) return null;
  const [least, most] = [Math.min(...months), Math.max(...months)];
  if (one >= OUTSIDE_YEAR.low * least && one <= OUTSIDE_YEAR.high * most) return null;
  return {
    id: 'month-outside-year',
    monthKwh: one,
    leastKwh: least,
    mostKwh: most,
    questions: ['bill-kwh', 'bill-year-kwh'],
  };
}

/** The cheapest hours cannot be hours of the peak. */
export function cheapHoursAtPeak(home: Home): Contradiction | null {
  if (!cheapInsidePeak(home)) return null;
  return {
    id: 'cheap-hours-at-peak',
    peak: hoursOf(home, 'peak-hours'),
    cheap: hoursOf(home, 'low-hours'),
    questions: ['peak-hours', 'low-hours'],
  };
}

function hoursOf({ facts }: Home, id: 'peak-hours' | 'low-hours'): ClockSpan {
  const [[from, to] = [0, 24]] = hoursTold(facts.value(id)) ?? [];
  return [from, to];
}
