import type { Cite } from '../../quantity/cite';
import { timesFigure } from '../../quantity/figure-arithmetic';
import type { Load, Season } from '../home';

/** What bills say about heating or cooling; the plan prints it, so that nothing is scaled in silence. */
export interface Calibration {
  readonly loads: Load[];
  readonly finding: CalibrationFinding | null;
}

export type WeatherUse = 'heating' | 'cooling';

/** What two or twelve bills say; `words` says it. */
export type CalibrationFinding =
  /** No use at all on twelve bills. */
  | { readonly code: 'no-use' }
  /** The months miss a fit to the weather by more than the share from which none is gone by. */
  | { readonly code: 'not-the-weather'; readonly missShare: number; readonly mostShare: number }
  | {
      readonly code: 'twelve-bills';
      readonly yearKwh: number;
      readonly basePerDay: number;
      readonly heatingKwh: number;
      readonly coolingKwh: number;
      readonly missShare: number;
      /** Share of a good fit, where the months miss it by more; else null. */
      readonly roughOver: number | null;
      readonly parts: readonly PartFinding[];
    }
  | {
      readonly code: 'two-bills' | 'two-bills-too-far';
      readonly what: WeatherUse;
      readonly season: 'winter' | 'summer';
      /** More than in a mild month, kWh a day: on the bills, and as counted. */
      readonly billedPerDay: number;
      readonly countedPerDay: number;
      readonly factor: number;
    };

/** What twelve bills say of heating or of cooling, kWh a year as it would have been counted. */
export interface PartFinding {
  readonly code: 'by-the-bills' | 'too-far' | 'too-near' | 'little-named';
  readonly what: WeatherUse;
  readonly countedKwh: number;
  /** What it is multiplied by. */
  readonly factor: number;
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
  bills: 'two' | 'twelve',
  cite?: Cite,
): Load {
  const scaled = (season: Season) => {
    const likely = factor[season];
    if (likely === 1) return load.kwhPerDay[season];
    const by = { low: Math.min(1, likely), likely, high: Math.max(1, likely) };
    const is = { code: 'set-by-bills', bills, factor: likely } as const;
    const source = { kind: 'told', is, ...(cite !== undefined && { cite }) } as const;
    return timesFigure(load.kwhPerDay[season], by, { source });
  };
  return {
    ...load,
    kwhPerDay: { winter: scaled('winter'), summer: scaled('summer'), mild: scaled('mild') },
  };
}
