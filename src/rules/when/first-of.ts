import type { Trigger } from '../rule';

/** The first trigger the household itself gave cause for; else the first careful one; else null. */
export function firstOf(...found: readonly (Trigger | null)[]): Trigger | null {
  const spoke = found.filter((one) => one !== null);
  return spoke.find((one) => !one.careful) ?? spoke[0] ?? null;
}
