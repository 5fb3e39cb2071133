/**
 * Refuse a profile that is not 24 finite watts, none below zero.
 * Throws RangeError naming the hour: profiles come from our own code.
 */
export function requireDayProfile(name: string, watts: ArrayLike<number>): void {
  if (watts.length !== 24) {
    throw new RangeError(`${name} must have 24 hours: it has ${watts.length} h`);
  }
  for (let hour = 0; hour < 24; hour++) {
    const value = watts[hour]!;
    if (!(value >= 0 && value < Infinity)) {
      throw new RangeError(`${name} at hour ${hour} must be at least 0 W: ${value} W`);
    }
  }
}
