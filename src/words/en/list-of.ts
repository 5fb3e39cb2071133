/** "a", "a and b", "a, b and c". */
export function listOf(items: readonly string[]): string {
  if (items.length <= 1) return items[0] ?? '';
  return `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}

/** A name as it stands inside a sentence: "Sump pump" becomes "sump pump", "A panel" "a panel"; "CPAP" stays. */
export function inSentence(name: string): string {
  return /^(?:A |[A-Z][a-z])/.test(name) ? name[0]!.toLowerCase() + name.slice(1) : name;
}
