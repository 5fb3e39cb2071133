import type { Plan } from '../../plan/plan';
import { sayHighEnd } from '../../words/en/say-high-end';
import { namedLoads } from './named-load';

/** A value as the plan file holds it: numbers to four significant digits, null as words. */
export type Plain = string | number | boolean | Plain[] | { [key: string]: Plain };

/** The electrical half as plain data; what is not known says so instead of standing empty. */
export function electricalData({ electrical, home }: Pick<Plan, 'electrical' | 'home'>): Plain {
  return plain({
    ...electrical,
    starting: electrical.starting.map((one) => ({
      ...one,
      starting: namedLoads(home, one.starting),
      order: namedLoads(home, one.order),
      keepApart: one.keepApart.map((pair) => namedLoads(home, pair)),
    })),
    highEnd: electrical.highEnd.map((gap) => ({
      ...gap,
      measure: namedLoads(home, gap.measure),
      offFirst: namedLoads(home, gap.offFirst),
      says: sayHighEnd(home, gap),
    })),
  });
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
