/**
 * A number of the work for people: four significant figures, whole from 1,000 on, the unit after it.
 * Finer than the plan's own printing, for here somebody follows the arithmetic.
 */
export function sayValue(value: number, unit: string): string {
  if (unit === '$') return `${value < 0 ? '-' : ''}$${dollars(Math.abs(value))}`;
  const text = fourFigures(value);
  return unit === '' ? text : `${text}${unit === '%' ? '' : ' '}${unit}`;
}

/** A number as somebody gave it: every digit of it. Years and counts stand alone. */
export function sayGiven(value: number, unit: string): string {
  if (unit === '' || unit === 'count' || unit === 'year') return String(value);
  if (unit === '$') return sayValue(value, unit);
  return `${grouped(value, 10)}${unit === '%' ? '' : ' '}${unit}`;
}

function fourFigures(value: number): string {
  const size = Math.abs(value);
  if (size >= 1000) return grouped(value, 0);
  if (size === 0) return '0';
  const places = Math.max(0, 3 - Math.floor(Math.log10(size)));
  return grouped(value, Math.min(places, 8));
}

function dollars(size: number): string {
  return size.toLocaleString('en-US', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
}

function grouped(value: number, places: number): string {
  const text = value.toLocaleString('en-US', { maximumFractionDigits: places });
  return text === '-0' ? '0' : text;
}
