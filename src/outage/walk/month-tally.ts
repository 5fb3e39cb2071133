import { HOURS_PER_YEAR } from '../../physics/weather/calendar';
import { monthOfHour } from '../month-of-hour';

/** A share found from a sample, and how far it may be off. */
export interface ShareWithError {
  readonly share: number;
  /** `null` when there is no spread to tell it from: a month seen in one year only, or all alike. */
  readonly standardError: number | null;
  readonly sampled: number;
}

/** Sampled outages, and those ridden through, by calendar month and year of their start. */
export class MonthTally {
  readonly #years: number;
  readonly #starts: Float64Array;
  readonly #rode: Float64Array;

  /** `hours` of the record the start hours come from. */
  constructor(hours: number) {
    this.#years = Math.max(1, Math.ceil(hours / HOURS_PER_YEAR));
    this.#starts = new Float64Array(12 * this.#years);
    this.#rode = new Float64Array(12 * this.#years);
  }

  add(start: number, rode: boolean): void {
    const cell = monthOfHour(start) * this.#years + Math.floor(start / HOURS_PER_YEAR);
    this.#starts[cell]! += 1;
    if (rode) this.#rode[cell]! += 1;
  }

  /**
   * Share ridden through over the given months, with the standard error of a ratio over clusters, in
   * strata:
   *   se^2 = sum_h B_h / (B_h - 1) sum_b (y_b - p_h m_b)^2 / n^2
   * A cluster b is one calendar month of one year, m_b its starts, y_b those ridden through; the
   * stratum h is the calendar month, B_h its years, p_h its share. Outages of one month share their
   * weather and are not independent, so the error covers the skipped hours and the luck of the years.
   * Cochran, Sampling Techniques, 3rd ed. 1977, chapters 5 and 6. `null` when none was sampled.
   */
  share(months: readonly number[]): ShareWithError | null {
    const strata = months.map((month) => this.#stratum(month)).filter((h) => h.starts > 0);
    const sampled = strata.reduce((sum, h) => sum + h.starts, 0);
    if (sampled === 0) return null;
    const rode = strata.reduce((sum, h) => sum + h.rode, 0);
    const known = strata.every((h) => h.squares !== null);
    const squares = known ? strata.reduce((sum, h) => sum + h.squares!, 0) : 0;
    const standardError = squares > 0 ? Math.sqrt(squares) / sampled : null;
    return { share: rode / sampled, standardError, sampled };
  }

  #stratum(month: number): { starts: number; rode: number; squares: number | null } {
    const from = month * this.#years;
    const starts = this.#starts.subarray(from, from + this.#years);
    const rode = this.#rode.subarray(from, from + this.#years);
    const all = starts.reduce((sum, m) => sum + m, 0);
    const yes = rode.reduce((sum, y) => sum + y, 0);
    const years = starts.filter((m) => m > 0).length;
    if (years < 2) return { starts: all, rode: yes, squares: null };
    const squares = starts.reduce((sum, m, b) => sum + (rode[b]! - (yes / all) * m) ** 2, 0);
    return { starts: all, rode: yes, squares: (years / (years - 1)) * squares };
  }
}
