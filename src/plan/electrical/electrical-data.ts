import type { Electrical } from './electrical';

/** A value as the plan file holds it: numbers to four significant digits, null as words. */
export type Plain = string | number | boolean | Plain[] | { [key: string]: Plain };

/** The electrical half as plain data; what is not known says so instead of standing empty. */
export function electricalData(electrical: Electrical): Plain {
  return plain(electrical);
}

function plain(value: unknown): Plain {
  if (value === null) return 'not known';
  if (typeof value === 'number') return round(value);
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(plain);
  const entries = Object.entries(value as object).map(([key, one]) => [key, plain(one)]);
  return Object.fromEntries(entries) as Plain;
}

function round(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`the plan cannot hold ${value}`);
  return value === 0 ? 0 : Number(value.toPrecision(4));
}
