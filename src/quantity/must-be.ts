import { requireWithin } from './require-within';

/** Throws RangeError naming value and unit unless `value` is a finite number above zero. */
export function mustBePositive(name: string, value: number, unit = ''): void {
  requireWithin(name, value, { above: 0, unit });
}

/** Throws RangeError naming value and unit unless `value` is a finite number of zero or more. */
export function mustNotBeNegative(name: string, value: number, unit = ''): void {
  requireWithin(name, value, { atLeast: 0, unit });
}

/** Throws RangeError unless `value` is above 0 and at most 1: an efficiency or a power factor. */
export function mustBeShare(name: string, value: number): void {
  requireWithin(name, value, { above: 0, atMost: 1, unit: 'of 1' });
}
