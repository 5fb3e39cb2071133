import type { Load, Season } from '../home';

/** The loads so far, in their order; what was made of them by the seasons, and where to go by the next load. */
interface Step<T> {
  readonly made: Map<string, T>;
  readonly next: WeakMap<Load, Step<T>>;
}

const step = <T>(): Step<T> => ({ made: new Map(), next: new WeakMap() });

/** The same for the very same loads in the same order, as long as there are these loads. */
export function onceForEach<T>(
  make: (loads: readonly Load[], of: readonly Season[]) => T,
): (loads: readonly Load[], of: readonly Season[]) => T {
  const root = step<T>();
  return (loads, of) => {
    let at = root;
    for (const load of loads) {
      const next = at.next.get(load) ?? step<T>();
      at.next.set(load, next);
      at = next;
    }
    const key = of.join();
    const known = at.made.get(key);
    if (known !== undefined) return known;
    const made = make(loads, of);
    at.made.set(key, made);
    return made;
  };
}
