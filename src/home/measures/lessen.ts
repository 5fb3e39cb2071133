import { timesFigure } from '../../quantity/figure-arithmetic';
import type { Triple } from '../../tables/household-loads';
import type { MeasureRow } from '../../tables/measures';
import { type Load, seasons } from '../home';

/** A load that uses only a share of its energy a day; power and start stay. The high end of the share is at most 1. */
export function lessened(load: Load, share: Triple, row: MeasureRow): Load {
  const [low, likely, high] = share;
  const kwhPerDay = Object.fromEntries(
    seasons.map((season) => {
      const usual = load.kwhPerDay[season];
      const source = {
        kind: 'table',
        is: { code: 'left-by-measure', measure: row.id },
        cite: row.source,
        from: [usual],
      } as const;
      return [season, timesFigure(usual, { low, likely, high }, { source })];
    }),
  ) as Load['kwhPerDay'];
  return { ...load, kwhPerDay };
}

/** Equal shares of the day's energy in each of these hours, from and until. */
export function shapeOfHours(blocks: NonNullable<MeasureRow['hours']>): number[] {
  const on = Array.from({ length: 24 }, (_, hour) =>
    blocks.some(([from, until]) => hour >= from && hour < until) ? 1 : 0,
  );
  const count = on.reduce<number>((sum, one) => sum + one, 0);
  return on.map((one) => one / count);
}

/** Each of the loads that a measure is about, changed; the same list where none is. */
export function changing(
  loads: readonly Load[],
  which: (load: Load) => boolean,
  to: (load: Load) => Load | null,
): readonly Load[] {
  if (!loads.some(which)) return loads;
  return loads.flatMap((load) => (which(load) ? (to(load) ?? []) : [load]));
}
