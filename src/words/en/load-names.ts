import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import { sayLoadName } from './loads/say-load-name';

type Named = Pick<Home, 'loads'>;

/** What people call a load of this home. */
export function loadName({ loads }: Named, id: LoadId): string {
  const load = loads.find((one) => one.id === id);
  return load === undefined ? id : sayLoadName(load.called);
}

/** Names in the order of the ids. */
export function loadNames(home: Named, ids: readonly LoadId[]): string[] {
  return ids.map((id) => loadName(home, id));
}
