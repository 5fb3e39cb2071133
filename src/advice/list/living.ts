import type { Home, Way } from '../../home/home';
import { livedHome } from '../../home/measures/lived-home';
import { thriftyCost } from '../../home/measures/measures-of';

/** A way of living: the home whose loads are those of it, and what it costs on top of every route, $. */
export interface Living {
  readonly way: Way;
  readonly home: Home;
  readonly extraUsd: number;
}

/** As things are: nothing is turned off or down. */
export const asUsual = (home: Home): Living => ({ way: 'usual', home, extraUsd: 0 });

/** With every measure that costs nothing or little, and turns; null where none has an effect here. */
export function thriftily(home: Home): Living | null {
  const lived = livedHome(home, 'thrifty');
  if (lived.loads === home.loads) return null;
  return { way: 'thrifty', home: lived, extraUsd: thriftyCost(home).value };
}
