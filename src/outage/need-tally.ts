import { HOURS_PER_YEAR } from '../physics/weather/calendar';
import type { ByMonth } from './by-month';
import { DrawdownPass } from './drawdown-pass';
import { monthOfHour } from './month-of-hour';
import { quantileInPlace } from './quantile';
import { type MonthSpan, seasonMonths } from './season';

/**
 * The storage needed from full, for one outage length, gathered a year at a time so that memory does
 * not grow with the years: a histogram for each month of the start, and each month's largest need in
 * each year. Answers for every battery size at once; sizes are rounded up to `binKwh`, never down.
 * The years form a ring (see `every-start`): call `finish` after the last one.
 */
export class NeedTally {
  readonly #pass: DrawdownPass;
  readonly #outageHours: number;
  readonly #binKwh: number;
  readonly #bins: number;
  /** 12 rows of `bins` + 1 counts; the last counts needs beyond the largest bin. */
  readonly #counts: Uint32Array;
  readonly #needed = new Float64Array(HOURS_PER_YEAR);
  #head = new Float64Array(0);
  /** Largest need by month, 12 a year. */
  readonly #largest: number[] = [];
  #start = 0;

  constructor(given: { outageHours: number; binKwh?: number; mostKwh?: number }) {
    const { outageHours, binKwh = 0.02, mostKwh = 400 } = given;
    this.#pass = new DrawdownPass(outageHours);
    this.#outageHours = outageHours;
    this.#binKwh = binKwh;
    this.#bins = Math.ceil(mostKwh / binKwh);
    this.#counts = new Uint32Array(12 * (this.#bins + 1));
  }

  /** The next year of net stored energy, 8760 hours from midnight of 1 January. */
  addYear(net: Float64Array): void {
    if (net.length !== HOURS_PER_YEAR) {
      throw new RangeError(`a year must have ${HOURS_PER_YEAR} h: ${net.length} h`);
    }
    if (this.#largest.length === 0) this.#head = net.slice(0, this.#outageHours - 1);
    for (let month = 0; month < 12; month++) this.#largest.push(0);
    this.#count(this.#pass.push(net, this.#needed));
  }

  /** Let the last outages run on into the first year. No year may be added after. */
  finish(): void {
    for (let from = 0; from < this.#head.length; from += HOURS_PER_YEAR) {
      this.#count(this.#pass.push(this.#head.subarray(from, from + HOURS_PER_YEAR), this.#needed));
    }
    this.#head = new Float64Array(0);
  }

  /** Share of the outages ridden through from full with `capKwh`, by month of the start. */
  odds(capKwh: number): ByMonth {
    const within = Math.min(this.#bins, Math.floor(capKwh / this.#binKwh + 1e-6) + 1);
    const rode = Array.from({ length: 12 }, (_, m) => sum(this.#row(m).subarray(0, within)));
    const all = Array.from({ length: 12 }, (_, m) => sum(this.#row(m)));
    const share = (yes: number, of: number) => (of > 0 ? yes / of : null);
    return { months: rode.map((yes, m) => share(yes, all[m]!)), all: share(sum(rode), sum(all)) };
  }

  /** As `sizeForShareOfOutages`, rounded up to a bin; `null` when more than the largest bin is needed. */
  sizeForShareOfOutages(season: MonthSpan, share: number): number | null {
    const rows = seasonMonths(season).map((month) => this.#row(month));
    const wanted = Math.ceil(share * rows.reduce((all, row) => all + sum(row), 0) - 1e-9);
    let seen = 0;
    for (let bin = 0; bin < this.#bins; bin++) {
      for (const row of rows) seen += row[bin]!;
      if (seen >= wanted && seen > 0) return bin * this.#binKwh;
    }
    return null;
  }

  /** As `sizeForShareOfYears`, exact. */
  sizeForShareOfYears(season: MonthSpan, share: number): number | null {
    const years = this.#largest.length / 12;
    const largest = Float64Array.from({ length: years }, (_, year) => {
      const months = seasonMonths(season).map((month) => {
        const turned = month < season.firstMonth ? 1 : 0;
        return this.#largest[12 * ((year + turned) % years) + month]!;
      });
      return Math.max(...months);
    });
    return quantileInPlace(largest, share);
  }

  #row(month: number): Uint32Array {
    const width = this.#bins + 1;
    return this.#counts.subarray(month * width, (month + 1) * width);
  }

  #count(written: number): void {
    const width = this.#bins + 1;
    for (let i = 0; i < written; i++, this.#start++) {
      const need = this.#needed[i]!;
      const month = monthOfHour(this.#start);
      const bin = Math.min(this.#bins, Math.ceil(need / this.#binKwh - 1e-6));
      this.#counts[month * width + bin]! += 1;
      const cell = 12 * Math.floor(this.#start / HOURS_PER_YEAR) + month;
      if (need > this.#largest[cell]!) this.#largest[cell] = need;
    }
  }
}

function sum(values: Uint32Array | readonly number[]): number {
  let all = 0;
  for (const value of values) all += value;
  return all;
}
