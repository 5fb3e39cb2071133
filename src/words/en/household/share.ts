/** "98", "more than 99", "fewer than 1": no certainty is claimed. */
export function sayShare(share: number): string {
  if (share > 0.995) return 'more than 99';
  if (share < 0.005) return 'fewer than 1';
  return String(Math.round(share * 100));
}
