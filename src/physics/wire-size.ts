import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';
import { type VoltageDrop, voltageDropByResistance } from './wire-voltage-drop';

/** A wire to choose from; lists run from thin to thick. */
export interface WireOption {
  readonly size: string;
  readonly ampacityAmps: number;
  /** Largest breaker the small-wire rule (NEC 240.4(D)) allows; null where it sets none. */
  readonly maxBreakerAmps: number | null;
  readonly ohmPer1000Ft: number;
  readonly reactancePer1000Ft?: number;
}

export interface WireSize {
  readonly size: string;
  readonly ampacityAmps: number;
  readonly drop: VoltageDrop;
  /** What made the wire this thick. */
  readonly limitedBy: 'ampacity' | 'voltage-drop';
}

/** Share of its rating that the conductors of a whole dwelling's service carry. NEC 310.12. */
export const DWELLING_SERVICE_SHARE = 0.83;

/** What a breaker must be rated for, A: the load, or 1.25 x a load that is on for three hours or more (210.20, 215.3). */
export function breakerNeedAmps(given: { loadAmps: number; continuous: boolean }): number {
  mustNotBeNegative('loadAmps', given.loadAmps, 'A');
  return given.loadAmps * (given.continuous ? 1.25 : 1);
}

/**
 * Thinnest wire that carries the breaker's rating and the load (continuous loads at 125 %, NEC 210.19 and 215.2)
 * and keeps the drop within `maxDropPercent` (3 % a branch circuit, 5 % in all: NEC notes, recommended).
 * The wire must carry the whole breaker rating: the next-size-up allowance of 240.4(B) is left to the electrician.
 * For the service or the one main feeder of a dwelling, 100 to 400 A, 83 % of the rating is enough (310.12).
 * No correction for heat or bundling. null when no wire in the list does it.
 */
export function smallestWire(given: {
  options: readonly WireOption[];
  breakerAmps: number;
  loadAmps: number;
  continuous: boolean;
  oneWayFt: number;
  supplyVolts: number;
  maxDropPercent: number;
  /** Share of the breaker's rating to carry; 1 unless 310.12 applies. */
  ratingShare?: number;
}): WireSize | null {
  mustBePositive('breakerAmps', given.breakerAmps, 'A');
  mustBePositive('maxDropPercent', given.maxDropPercent, '%');
  const share = given.ratingShare ?? 1;
  const needAmps = Math.max(share * given.breakerAmps, share * breakerNeedAmps(given));
  const carries = (wire: WireOption) =>
    wire.ampacityAmps >= needAmps &&
    (wire.maxBreakerAmps === null || wire.maxBreakerAmps >= given.breakerAmps);
  const dropIn = (wire: WireOption) =>
    voltageDropByResistance({
      amps: given.loadAmps,
      oneWayFt: given.oneWayFt,
      ohmPer1000Ft: wire.ohmPer1000Ft,
      reactancePer1000Ft: wire.reactancePer1000Ft,
      supplyVolts: given.supplyVolts,
    });
  const byAmpacity = given.options.find(carries);
  const wire = given.options.find((w) => carries(w) && dropIn(w).percent <= given.maxDropPercent);
  if (!wire) return null;
  const limitedBy = wire === byAmpacity ? 'ampacity' : 'voltage-drop';
  return { size: wire.size, ampacityAmps: wire.ampacityAmps, drop: dropIn(wire), limitedBy };
}
