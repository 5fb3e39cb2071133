import { RAD_PER_DEG } from '../angle';

/** The assumption about snow on panels; the numbers come from a table and are shown to the reader. */
export interface SnowAssumption {
  /** A month whose mean air is this warm or warmer loses nothing, C. */
  noneAboveC: number;
  /** A month this cold or colder loses the most, C. */
  mostBelowC: number;
  /** Share of a month's sun lost on a flat plane in the coldest months, 0 to 1. */
  mostLostShare: number;
}

/**
 * Share of a month's sun lost to snow lying on the panels, 0 to 1: none in warm months, growing in a
 * straight line as the month's mean air gets colder, and less on a steep plane, which sheds it:
 *
 *     loss = most x (warm - T)/(warm - cold) x cos^2(tilt)
 *
 * A stated assumption, not a forecast: snowfall is not among the station figures. The cos^2 of tilt
 * is the form of Townsend & Powers 2011, 37th IEEE PVSC.
 */
export function snowLossShare(
  month: { meanC: number; tiltDeg: number },
  snow: SnowAssumption,
): number {
  const cold = (snow.noneAboveC - month.meanC) / (snow.noneAboveC - snow.mostBelowC);
  return (
    snow.mostLostShare * Math.min(1, Math.max(0, cold)) * Math.cos(month.tiltDeg * RAD_PER_DEG) ** 2
  );
}
