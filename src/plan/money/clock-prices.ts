import type { ClockPrices } from '../../bill/tariff/bill-reading';
import type { ClockRange, DayKind } from '../../bill/tariff/tariff';
import type { Home } from '../../home/home';
import { hoursTold, hoursWithout } from './clock-hours-told';
import { toldDollars } from './told-price';

/** Prices by the clock as told; null when the plan has none, or its peak or lowest price is not known. */
export function clockPrices(home: Home): ClockPrices | null {
  const { facts } = home;
  if (!facts.is('bill-plan', 'time-of-use', 'demand')) return null;
  const [peak, low] = [toldDollars(home, 'price-peak'), toldDollars(home, 'price-low')];
  if (peak === null || low === null) return null;
  const days = facts.is('peak-days', 'every') ? 'every' : 'weekdays';
  const hours = hoursTold(facts.value('peak-hours')) ?? [[16, 21]];
  const top = { is: 'peak', price: peak, days, hours } as const;
  const when = {
    ...monthsOf(home),
    ...(facts.is('peak-days', 'workdays') && { holidaysOff: true }),
  };
  const middle = toldDollars(home, 'price-middle');
  if (middle === null) return { kind: 'by-clock', periods: [top], otherPrice: low, ...when };
  const periods = [top, ...cheapest(hoursTold(facts.value('low-hours')) ?? [[0, 6]], top, low)];
  // Told to lie inside the peak, the cheapest hours are all those outside it: no price told counts in no hour.
  if (periods.length === 1) return { kind: 'by-clock', periods, otherPrice: low, ...when };
  return { kind: 'by-clock', periods, otherPrice: middle, ...when };
}

type Clocked = ClockPrices['periods'][number];

/** Cheap hours that reach into the peak would price one hour twice: the peak goes first, on the days it holds. */
function cheapest(told: readonly ClockRange[], peak: Clocked, price: number): Clocked[] {
  const left = hoursWithout(told, peak.hours);
  const cheap = (days: DayKind, hours: readonly ClockRange[]): Clocked => ({
    is: 'night',
    price,
    days,
    hours,
  });
  if (left.length === 0) return [];
  const whole = left.length === hoursWithout(told, []).length;
  return whole || peak.days === 'every'
    ? [cheap('every', left)]
    : [cheap('weekdays', left), cheap('weekends', told)];
}

/** The cheapest hours told lie whole within the peak hours told, on the days of the peak. */
export function cheapInsidePeak({ facts }: Home): boolean {
  const [peak, low] = [hoursTold(facts.value('peak-hours')), hoursTold(facts.value('low-hours'))];
  if (peak === null || low === null) return false;
  return (
    facts.told('peak-hours') && facts.told('low-hours') && hoursWithout(low, peak).length === 0
  );
}

/** The months the prices told hold in, and those of the rest of the year where both ends of them are known. */
function monthsOf(home: Home): Pick<ClockPrices, 'months' | 'rest'> {
  const { facts } = home;
  const months = facts.is('peak-season', 'summer', 'dear-summer')
    ? 'summer'
    : facts.is('peak-season', 'winter', 'dear-winter')
      ? 'winter'
      : null;
  if (months === null) return {};
  const [peak, low] = [toldDollars(home, 'other-peak'), toldDollars(home, 'other-low')];
  if (peak === null || low === null) return { months };
  return { months, rest: { peak, low, middle: toldDollars(home, 'other-middle') ?? low } };
}
