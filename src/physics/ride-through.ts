import { mustNotBeNegative } from '../quantity/must-be';

/** A point of a ride-through curve: equipment stands this voltage for so long (null: without end). */
export interface RideThroughPoint {
  readonly side: 'under' | 'over';
  readonly percentOfNominal: number;
  readonly seconds: number | null;
}

/**
 * Seconds that equipment built to the curve stands a voltage: null is without end, 0 is not at all.
 * Between two points the worse holds. Above the highest point held the answer is 0.
 * Source of the usual points: ITI (CBEMA) curve, 2000 revision. A design target, never for a medical device.
 */
export function rideThroughSeconds(
  percentOfNominal: number,
  points: readonly RideThroughPoint[],
): number | null {
  mustNotBeNegative('percentOfNominal', percentOfNominal, '%');
  const low = percentOfNominal <= 100;
  const covering = points.filter(
    (p) =>
      p.side === (low ? 'under' : 'over') &&
      (low ? p.percentOfNominal <= percentOfNominal : p.percentOfNominal >= percentOfNominal),
  );
  if (covering.length === 0) return 0;
  return covering.some((p) => p.seconds === null)
    ? null
    : Math.max(...covering.map((p) => p.seconds!));
}

/** Whether equipment built to the curve stays on through a gap or a sag of that length. */
export function ridesThrough(
  given: { percentOfNominal: number; seconds: number },
  points: readonly RideThroughPoint[],
): boolean {
  mustNotBeNegative('seconds', given.seconds, 's');
  const allowed = rideThroughSeconds(given.percentOfNominal, points);
  return allowed === null || given.seconds <= allowed;
}
