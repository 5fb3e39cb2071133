import { readFileSync, statSync } from 'node:fs';
import { LineCounter, parseDocument } from 'yaml';
import { type Fault, MOST_BYTES } from './home-file';
import { type PlaceIn, placeIn } from './place-in';
import { saySystemError } from './say-system-error';

export type ReadYaml =
  | { readonly ok: true; readonly data: unknown; readonly placeOf: PlaceIn }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Plain data of a YAML file, with the place of every part of it. Never throws. */
export function readYamlFile(path: string): ReadYaml {
  let text: string;
  try {
    if (statSync(path).size > MOST_BYTES) {
      return faulty('this file is far too large. Check that it is the right one.');
    }
    text = readFileSync(path, 'utf8');
  } catch (error) {
    return faulty(saySystemError(error, 'read', path));
  }
  try {
    const counter = new LineCounter();
    const doc = parseDocument(text, { lineCounter: counter, uniqueKeys: true, version: '1.2' });
    const faults = doc.errors.map((error) => {
      const { line, col } = counter.linePos(error.pos[0]);
      return { line, column: col, says: `${firstLine(error.message)} Mend this line first.` };
    });
    if (faults.length > 0) return { ok: false, faults };
    // Aliases are of no use here and can be made to blow up.
    return { ok: true, data: doc.toJS({ maxAliasCount: 0 }), placeOf: placeIn(doc, counter) };
  } catch {
    return faulty('this text could not be read as YAML. Write lines of "key: value".');
  }
}

function faulty(says: string): ReadYaml {
  return { ok: false, faults: [{ line: 1, column: 1, says }] };
}

/** The message of the YAML reader without its picture of the line. */
export function firstLine(message: string): string {
  return `${message.split('\n')[0]!.replace(/ at line \d+, column \d+:?$/, '')}.`.replace(
    '..',
    '.',
  );
}
