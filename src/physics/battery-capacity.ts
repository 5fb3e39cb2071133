import { mustBeShare, mustNotBeNegative } from '../quantity/must-be';
import { requireWithin } from '../quantity/require-within';

export interface BatteryCapacityParts {
  readonly nameplateKwh: number;
  /** Share of the nameplate that may be taken out; 1 when the rating is already the usable one. */
  readonly usableDepth: number;
  readonly ageYears: number;
  /** Capacity lost in a year, as a share of new. */
  readonly fadePerYear: number;
  /** What is left of the capacity at the cells' temperature: see `coldCapacity`. */
  readonly coldShare: number;
}

/**
 * Energy a battery can give from full to empty, counted inside it, kWh:
 *   nameplate x depth x (1 - fade x age) x cold share
 * 0 when it has faded away.
 */
export function usableKwh(parts: BatteryCapacityParts): number {
  const { nameplateKwh, usableDepth, ageYears, fadePerYear, coldShare } = parts;
  mustNotBeNegative('nameplateKwh', nameplateKwh, 'kWh');
  mustBeShare('usableDepth', usableDepth);
  requireWithin('coldShare', coldShare, { atLeast: 0, atMost: 1, unit: '(share)' });
  return nameplateKwh * usableDepth * shareLeft(ageYears, fadePerYear) * coldShare;
}

/**
 * Share of the new capacity left after some years, falling by the same amount each year.
 *
 * 0.02 a year, 80 % at ten years, is our rule for lithium iron phosphate kept at room temperature: it
 * lies between half full and full in the calendar fade of Naumann, Schimpe, Keil, Hesse & Jossen,
 * J. Energy Storage 17 (2018) 153-169 (13 % and 21 % in ten years at 25 C), near full, as backup is kept.
 */
export function shareLeft(ageYears: number, fadePerYear: number): number {
  mustNotBeNegative('ageYears', ageYears, 'years');
  requireWithin('fadePerYear', fadePerYear, { atLeast: 0, atMost: 1, unit: '(share a year)' });
  return Math.max(0, 1 - fadePerYear * ageYears);
}
