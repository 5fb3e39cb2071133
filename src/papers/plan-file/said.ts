/** A code alone, or with the figures it speaks of. */
type Coded = string | { readonly code: string };

/** Codes of the plan as the plan file holds them: each with its words. */
export function said<Code extends Coded>(
  all: readonly Code[],
  say: (one: Code) => string,
): { code: string; says: string }[] {
  return all.map((one) => ({
    code: typeof one === 'string' ? one : one.code,
    says: say(one),
  }));
}
