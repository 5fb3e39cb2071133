import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { loadName } from '../../home/loads/load-names';

/** A load as the plan file refers to it: its id among `loads`, and its name for whoever reads. */
export interface NamedLoad {
  id: LoadId;
  name: string;
}

export function namedLoad(home: Home, id: LoadId): NamedLoad {
  return { id, name: loadName(home, id) };
}

export function namedLoads(home: Home, ids: readonly LoadId[]): NamedLoad[] {
  return ids.map((id) => namedLoad(home, id));
}
