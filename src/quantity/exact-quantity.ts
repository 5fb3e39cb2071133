const PLAIN = ['count', 'people', 'year', 'per year'];

/** A number with its unit, nothing rounded, in a form that `parseQuantity` reads back to the same number. */
export function exactQuantity(value: number, unit: string): string {
  if (PLAIN.includes(unit)) return String(value);
  if (unit === '$') return `$${value}`;
  return `${value} ${unit}`;
}
