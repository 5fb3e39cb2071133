import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import type { Words } from '../../words/words';

/** A load as the plan file refers to it: its id among `loads`, and its name for whoever reads. */
export interface NamedLoad {
  id: LoadId;
  name: string;
}

export function namedLoad(words: Words, home: Home, id: LoadId): NamedLoad {
  return { id, name: words.loadName(home, id) };
}

export function namedLoads(words: Words, home: Home, ids: readonly LoadId[]): NamedLoad[] {
  return ids.map((id) => namedLoad(words, home, id));
}
