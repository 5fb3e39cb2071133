import type { Fault } from './home-file';
import { parseYaml } from './parse-yaml';
import { type PlaceIn, placeIn } from './place-in';
import { readText } from './read-text';
import { saySystemError } from './say-system-error';

export type ReadYaml =
  | { readonly ok: true; readonly data: unknown; readonly placeOf: PlaceIn }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Plain data of a YAML file, with the place of every part of it. Never throws. */
export function readYamlFile(path: string): ReadYaml {
  let text: string;
  try {
    text = readText(path);
  } catch (error) {
    return faulty(saySystemError(error, 'read', path));
  }
  const parsed = parseYaml(text);
  if (parsed === null) return faulty(NO_YAML);
  const { doc, counter, faults } = parsed;
  if (faults.length > 0) return { ok: false, faults };
  try {
    // Aliases are of no use here and can be made to blow up.
    return { ok: true, data: doc.toJS({ maxAliasCount: 0 }), placeOf: placeIn(doc, counter) };
  } catch {
    return faulty(NO_YAML);
  }
}

const NO_YAML = 'this text could not be read as YAML. Write lines of "key: value".';

function faulty(says: string): ReadYaml {
  return { ok: false, faults: [{ line: 1, column: 1, says }] };
}
