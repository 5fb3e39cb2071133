import { BROKEN } from './never/papers';

/** Where in a value a number is none or a word is broken, however deep; null where all is sound. */
export function brokenIn(value: unknown, path = '', seen = new Set<object>()): string | null {
  if (typeof value === 'number') return Number.isNaN(value) ? path : null;
  if (typeof value === 'string') return BROKEN.test(value) ? `${path} "${value}"` : null;
  if (typeof value !== 'object' || value === null || seen.has(value)) return null;
  seen.add(value);
  if (ArrayBuffer.isView(value)) {
    return (value as Float64Array).some(Number.isNaN) ? path : null;
  }
  for (const [key, child] of Object.entries(value)) {
    const broken = brokenIn(child, `${path}.${key}`, seen);
    if (broken !== null) return broken;
  }
  return null;
}
