import { timesFigure } from '../../quantity/figure-arithmetic';
import type { Load, Season } from '../home';

/** What bills say about heating or cooling; the plan prints it, so that nothing is scaled in silence. */
export interface Calibration {
  readonly loads: Load[];
  readonly says: string | null;
}

/** Less than this a day tells more of habits than of the weather, kWh. Our judgement. */
export const LEAST_KWH = 4;

/** Outside this the bills and the answers do not speak of the same home. Our judgement. */
export function believed(factor: number): boolean {
  return factor >= 0.4 && factor <= 2.5;
}

/** A load set by bills, each season by its own factor; the range keeps what was thought before. */
export function scaledBy(
  load: Load,
  factor: Readonly<Record<Season, number>>,
  source: { label: string; cite?: string },
): Load {
  const scaled = (season: Season) => {
    const likely = factor[season];
    if (likely === 1) return load.kwhPerDay[season];
    const by = { low: Math.min(1, likely), likely, high: Math.max(1, likely) };
    const label = `${source.label}, x ${likely.toFixed(2)}`;
    return timesFigure(load.kwhPerDay[season], by, { source: { kind: 'told', ...source, label } });
  };
  return {
    ...load,
    kwhPerDay: { winter: scaled('winter'), summer: scaled('summer'), mild: scaled('mild') },
  };
}
