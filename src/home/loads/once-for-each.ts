import { LastOnes } from '../../quantity/last-ones';
import type { Load, Season } from '../home';

interface Kept<T> {
  readonly loads: readonly Load[];
  readonly of: readonly Season[];
  readonly made: T;
}

/** Sets of loads kept: those of the kinds and sizes of one home. */
const MOST = 16;

/** The same for the very same loads and seasons in the same order, while they are among the last that were asked about. */
export function onceForEach<T>(
  make: (loads: readonly Load[], of: readonly Season[]) => T,
): (loads: readonly Load[], of: readonly Season[]) => T {
  const kept = new LastOnes<Kept<T>>(MOST);
  return (loads, of) => {
    const known = kept.find((one) => same(one.loads, loads) && same(one.of, of));
    return (known ?? kept.put({ loads: [...loads], of, made: make(loads, of) })).made;
  };
}

function same(a: readonly unknown[], b: readonly unknown[]): boolean {
  return a.length === b.length && a.every((one, i) => one === b[i]);
}
