/** What an argument is called, its unit and the closed interval it must lie in. */
export interface Allowed {
  name: string;
  unit: string;
  min: number;
  max: number;
}

/** Throws RangeError naming value and unit when an argument is not finite or outside its interval. */
export function demandRange(value: number, { name, unit, min, max }: Allowed): void {
  if (!(value >= min && value <= max)) {
    throw new RangeError(`${name} must be from ${min} to ${max} ${unit}, not ${value} ${unit}`);
  }
}
