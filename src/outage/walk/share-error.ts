import { HOURS_A_YEAR, monthOfHour } from '../month-of-hour';

/** A share found from a sample, and how far it may be off. */
export interface ShareWithError {
  readonly share: number;
  /** `null` when there is no spread to tell it from: a month seen in one year only, or all alike. */
  readonly standardError: number | null;
  readonly sampled: number;
}

/**
 * Share of the sampled outages ridden through, with the standard error of a ratio over clusters, in
 * strata:
 *   se^2 = sum_h B_h / (B_h - 1) sum_b (y_b - p_h m_b)^2 / n^2
 * A cluster b is one calendar month of one year, m_b its starts, y_b those ridden through; the stratum h
 * is the calendar month, B_h its years, p_h its share. Outages of one month share their weather and are
 * not independent, so the error covers the skipped hours and the luck of the years.
 * Cochran, Sampling Techniques, 3rd ed. 1977, chapters 5 and 6.
 */
export function shareWithError(
  outages: readonly { start: number; yes: boolean }[],
): ShareWithError | null {
  const sampled = outages.length;
  if (sampled === 0) return null;
  const strata = Array.from({ length: 12 }, () => new Map<number, Cluster>());
  let rode = 0;
  for (const { start, yes } of outages) {
    const years = strata[monthOfHour(start)]!;
    const year = Math.floor(start / HOURS_A_YEAR);
    const cluster = years.get(year) ?? { starts: 0, rode: 0 };
    cluster.starts += 1;
    if (yes) cluster.rode += 1;
    rode += yes ? 1 : 0;
    years.set(year, cluster);
  }
  const used = strata.filter((years) => years.size > 0);
  const variance = used.some((years) => years.size < 2)
    ? 0
    : used.reduce((sum, years) => sum + stratumSquares([...years.values()]), 0);
  const standardError = variance > 0 ? Math.sqrt(variance) / sampled : null;
  return { share: rode / sampled, standardError, sampled };
}

interface Cluster {
  starts: number;
  rode: number;
}

function stratumSquares(clusters: readonly Cluster[]): number {
  const starts = clusters.reduce((sum, c) => sum + c.starts, 0);
  const share = clusters.reduce((sum, c) => sum + c.rode, 0) / starts;
  const squares = clusters.reduce((sum, c) => sum + (c.rode - share * c.starts) ** 2, 0);
  return (clusters.length / (clusters.length - 1)) * squares;
}
