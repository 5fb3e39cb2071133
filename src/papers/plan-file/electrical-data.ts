import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { namedLoads } from './named-load';
import type { PlanData } from './plan-schema';

/** A value as the plan file holds it: null as words, nothing read-only. */
type Plain<T> = T extends null
  ? 'not known'
  : T extends object
    ? { -readonly [Key in keyof T]: Plain<T[Key]> }
    : T;

/** The electrical half as plain data; what is not known says so instead of standing empty. */
export function electricalData(
  { electrical, home }: Pick<Plan, 'electrical' | 'home'>,
  words: Words,
): PlanData['electrical'] {
  return plain({
    ...electrical,
    starting: electrical.starting.map((one) => ({
      ...one,
      starting: namedLoads(home, one.starting),
      order: namedLoads(home, one.order),
      keepApart: one.keepApart.map((pair) => namedLoads(home, pair)),
    })),
    siting: electrical.siting.map((point) => ({
      verdict: point.verdict,
      code: point.code,
      says: words.forElectrician.siting(point),
      cite: point.cite,
    })),
    highEnd: electrical.highEnd.map((gap) => ({
      ...gap,
      measure: namedLoads(home, gap.measure),
      offFirst: namedLoads(home, gap.offFirst),
      says: words.highEnd(home, gap),
    })),
  });
}

function plain<T>(value: T): Plain<T> {
  return plainOf(value) as Plain<T>;
}

function plainOf(value: unknown): unknown {
  if (value === null) return 'not known';
  if (typeof value === 'number') return round(value);
  if (typeof value === 'string' || typeof value === 'boolean') return value;
  if (Array.isArray(value)) return value.map(plainOf);
  const entries = Object.entries(value as object).map(([key, one]) => [key, plainOf(one)]);
  return Object.fromEntries(entries);
}

function round(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`the plan cannot hold ${value}`);
  return value === 0 ? 0 : Number(value.toPrecision(4));
}
