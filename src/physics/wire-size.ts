import { mustBePositive, mustNotBeNegative } from '../quantity/must-be';
import { type VoltageDrop, voltageDropByResistance } from './wire-voltage-drop';

/** A wire to choose from; lists run from thin to thick. */
export interface WireOption {
  readonly size: string;
  readonly ampacityAmps: number;
  /** Largest breaker the small-wire rule (NEC 240.4(D)) allows; null where it sets none. */
  readonly maxBreakerAmps: number | null;
  readonly ohmPer1000Ft: number;
}

export interface WireSize {
  readonly size: string;
  readonly ampacityAmps: number;
  readonly drop: VoltageDrop;
  /** What made the wire this thick. */
  readonly limitedBy: 'ampacity' | 'voltage drop';
}

/**
 * Thinnest wire that carries the breaker's rating and the load (continuous loads at 125 %, NEC 210.19 and 215.2)
 * and keeps the drop within `maxDropPercent` (3 % a branch circuit, 5 % in all: NEC notes, recommended).
 * The wire must carry the whole breaker rating: the next-size-up allowance of 240.4(B) is left to the electrician.
 * No correction for heat or bundling. null when no wire in the list does it.
 */
export function smallestWire(of: {
  options: readonly WireOption[];
  breakerAmps: number;
  loadAmps: number;
  continuous: boolean;
  oneWayFt: number;
  supplyVolts: number;
  maxDropPercent: number;
}): WireSize | null {
  mustBePositive('breakerAmps', of.breakerAmps, 'A');
  mustNotBeNegative('loadAmps', of.loadAmps, 'A');
  mustBePositive('maxDropPercent', of.maxDropPercent, '%');
  const needAmps = Math.max(of.breakerAmps, of.loadAmps * (of.continuous ? 1.25 : 1));
  const carries = (wire: WireOption) =>
    wire.ampacityAmps >= needAmps &&
    (wire.maxBreakerAmps === null || wire.maxBreakerAmps >= of.breakerAmps);
  const dropIn = (wire: WireOption) =>
    voltageDropByResistance({
      amps: of.loadAmps,
      oneWayFt: of.oneWayFt,
      ohmPer1000Ft: wire.ohmPer1000Ft,
      supplyVolts: of.supplyVolts,
    });
  const byAmpacity = of.options.find(carries);
  const wire = of.options.find((w) => carries(w) && dropIn(w).percent <= of.maxDropPercent);
  if (!wire) return null;
  const limitedBy = wire === byAmpacity ? 'ampacity' : 'voltage drop';
  return { size: wire.size, ampacityAmps: wire.ampacityAmps, drop: dropIn(wire), limitedBy };
}
