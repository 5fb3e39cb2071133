import type { RuleId } from '../tables/rules';

/** What one rule says, in one language. */
export interface RuleSentences {
  /** The caution in plain words, one to five short sentences. */
  readonly says: string;
  /** The same where nobody told it, so that nothing is claimed of this home that is only not known. */
  readonly saysIfOpen?: string;
  /** What to ask for as proof: a listing mark, a permit number, an inspection; left out where there is nothing to show. */
  readonly proof?: string;
}

export type RulesSay = Readonly<Record<RuleId, RuleSentences>>;

/** What a caution says: careful where it stands for want of an answer. */
export function sayRule(
  rules: RulesSay,
  { id, careful }: { id: RuleId; careful: boolean },
): string {
  const { says, saysIfOpen } = rules[id];
  return careful ? (saysIfOpen ?? says) : says;
}
