import type { RuleId } from '../../src/tables/rules';

/** A hazard in a few words of our own, and what takes care of it. */
export interface Cover {
  readonly hazard: string;
  /** Rules that speak of it. */
  readonly rules?: readonly RuleId[];
  /** Questions that find it while the interview runs. */
  readonly asks?: readonly string[];
  /** Why no rule speaks of it. */
  readonly reason?: string;
}

/** A hazard that rules speak of. */
export const byRules = (hazard: string, ...rules: RuleId[]): Cover => ({ hazard, rules });

/** A hazard that the interview finds, and what it does about it. */
export const byAsking = (hazard: string, asks: string[], reason: string): Cover => ({
  hazard,
  asks,
  reason,
});

/** A hazard no rule speaks of, and why. */
export const left = (hazard: string, reason: string): Cover => ({ hazard, reason });
