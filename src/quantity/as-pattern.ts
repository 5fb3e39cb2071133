/** A text as a pattern that finds just it. */
export function asPattern(text: string): string {
  return text.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&');
}
