import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';

type Named = Pick<Home, 'loads'>;

/** What people call a load of this home. */
export function loadName({ loads }: Named, id: LoadId): string {
  return loads.find((load) => load.id === id)?.name ?? id;
}

/** Names in the order of the ids. */
export function loadNames(home: Named, ids: readonly LoadId[]): string[] {
  return ids.map((id) => loadName(home, id));
}
