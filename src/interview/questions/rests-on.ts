/** True when a condition anywhere in it names the question. */
export function restsOn(node: unknown, id: string): boolean {
  if (node === null || typeof node !== 'object') return false;
  return Object.entries(node).some(([key, value]) =>
    key === 'q' ? value === id : restsOn(value, id),
  );
}
