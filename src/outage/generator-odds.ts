import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import type { HourSeries } from '../quantity/hour-series';
import { forEachMonth } from './by-month';
import { NEGLIGIBLE_KWH } from './every-start';
import { type GeneratorHoursInput, generatorHoursSurvived } from './generator-hours-survived';
import { HOURS_IN_MONTH } from './month-of-hour';
import { oddsFromFull, type RideThroughOdds } from './ride-through-odds';
import { borrowHours, giveBack } from './spare-hours';
import { forEachStretch } from './stretches-of-hours';

/**
 * The odds of a generator alone, for every length at once, from every start hour.
 *
 *   B(t) = burned in all hours before t        rides through D hours from s:  B(s + D) - B(s) <= fuel at hand
 *
 * That holds where every hour wants something and none wants more than the generator gives; else the hours survived are
 * counted (`generatorHoursSurvived`), with the same result where both may be asked. Lengths are whole hours, none above
 * `limitHours`; a record that is no whole years is counted the long way.
 */
export function generatorOdds(
  input: GeneratorHoursInput,
  lengths: readonly number[],
): readonly RideThroughOdds[] {
  const { loadKw, generator, limitHours } = input;
  const count = loadKw.length;
  if (
    Number.isFinite(generator.refillEveryHours) ||
    count % HOURS_PER_YEAR !== 0 ||
    !isPlain(input)
  ) {
    return oddsFromFull(generatorHoursSurvived(input), lengths);
  }
  const before = borrowHours(count + limitHours + 1);
  addUp(input, before);
  const days = daysOf(before, count);
  const fuel = generator.fuelAtStart + generator.fuelLine.perKwh * NEGLIGIBLE_KWH;
  const odds = lengths.map((hours) => {
    const rides = new Float64Array(12);
    const alike = allAlike(days, hours, fuel);
    forEachMonth(count, (month, from, upTo) => {
      rides[month]! +=
        alike === null ? countWithin(before, { hours, fuel, from, upTo }) : alike * (upTo - from);
    });
    const years = count / HOURS_PER_YEAR;
    return {
      hours,
      months: Array.from(rides, (yes, month) => yes / (years * HOURS_IN_MONTH[month]!)),
      all: rides.reduce((sum, yes) => sum + yes, 0) / count,
    };
  });
  giveBack(before);
  return odds;
}

/** Every hour wants something, and the generator gives it: it runs all day and is large enough. */
function isPlain({ loadKw, generator }: GeneratorHoursInput): boolean {
  if (Array.from(generator.runsByHour).includes(0)) return false;
  let plain = true;
  forEachStretch(loadKw.length, (from, upTo) => {
    plain &&= within(loadKw, NEGLIGIBLE_KWH, generator.ratedKw + NEGLIGIBLE_KWH, from, upTo);
  });
  return plain;
}

function within(
  values: HourSeries,
  above: number,
  atMost: number,
  from: number,
  upTo: number,
): boolean {
  for (let t = from; t < upTo; t++) {
    if (!(values[t]! > above && values[t]! <= atMost)) return false;
  }
  return true;
}

/** Burned in all hours before each, on past the end of the ring as far as an outage may run. */
function addUp({ loadKw, generator, limitHours }: GeneratorHoursInput, before: Float64Array): void {
  const count = loadKw.length;
  before[0] = 0;
  forEachStretch(count, (from, upTo) => addStretch(loadKw, generator, before, from, upTo));
  // Longer than the record, the outage goes round it again.
  for (let t = 1; t <= limitHours; t++) before[count + t] = before[count]! + before[t]!;
}

function addStretch(
  loadKw: HourSeries,
  { fuelLine: { noLoadPerHour, perKwh }, ratedKw }: GeneratorHoursInput['generator'],
  before: Float64Array,
  from: number,
  upTo: number,
): void {
  let burned = before[from]!;
  for (let t = from; t < upTo; t++) {
    burned += noLoadPerHour + perKwh * Math.min(ratedKw, loadKw[t]!);
    before[t + 1] = burned;
  }
}

/** The least and the most burned in a day of the record. */
interface Days {
  readonly least: number;
  readonly most: number;
}

function daysOf(before: Float64Array, count: number): Days {
  let least = Infinity;
  let most = 0;
  for (let t = 0; t < count; t += 24) {
    const burned = before[t + 24]! - before[t]!;
    least = Math.min(least, burned);
    most = Math.max(most, burned);
  }
  return { least, most };
}

/** Sums of a hundred years are that exact, and more. */
const ROUNDING = 1e-6;

/**
 * 1 where the fuel is enough for as many of the hungriest days as so many hours can touch, 0 where it is not for as many of
 * the least hungry as they surely hold: then no start need be counted. Null: some may, some may not.
 */
function allAlike({ least, most }: Days, hours: number, fuel: number): 0 | 1 | null {
  const touched = Math.floor((hours + 22) / 24) + 1;
  const held = Math.max(0, Math.floor((hours - 23) / 24));
  if (touched * most * (1 + ROUNDING) + ROUNDING <= fuel) return 1;
  return held * least * (1 - ROUNDING) - ROUNDING > fuel ? 0 : null;
}

function countWithin(
  before: Float64Array,
  { hours, fuel, from, upTo }: { hours: number; fuel: number; from: number; upTo: number },
): number {
  let count = 0;
  for (let s = from; s < upTo; s++) if (before[s + hours]! - before[s]! <= fuel) count += 1;
  return count;
}
