/** Codes of the plan as the plan file holds them: each with its words. */
export function said<Of extends { readonly code: string }>(
  all: readonly Of[],
  say: (of: Of) => string,
): { code: Of['code']; says: string }[] {
  return all.map((one) => ({ code: one.code, says: say(one) }));
}
