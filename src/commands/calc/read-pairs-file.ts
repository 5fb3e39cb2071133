import { readFileSync } from 'node:fs';
import { parseDocument } from 'yaml';
import type { Pairs } from './read-pairs';

/** Far more than any computation takes; a larger file is not one of ours. */
const LARGEST_BYTES = 200_000;

/** `key: value` pairs of a YAML or JSON file. A list or a mapping of quantities becomes "name quantity; ...". */
export function readPairsFile(path: string): Pairs {
  let text: string;
  try {
    text = readFileSync(path, 'utf8');
  } catch (error) {
    return { ok: false, says: `Cannot read ${path}: ${(error as NodeJS.ErrnoException).code}.` };
  }
  if (text.length > LARGEST_BYTES) return { ok: false, says: `${path} is too large.` };
  const document = parseDocument(text, { prettyErrors: true });
  const [error] = document.errors;
  if (error) {
    const line = error.linePos?.[0];
    const where = line ? `, line ${line.line}, column ${line.col}` : '';
    return { ok: false, says: `${path}${where}: this is neither YAML nor JSON. Write key: value.` };
  }
  let data: unknown;
  try {
    data = document.toJS({ maxAliasCount: 20 });
  } catch {
    return { ok: false, says: `${path} uses aliases that do not end. Write key: value.` };
  }
  return pairsOf(path, data);
}

function pairsOf(path: string, data: unknown): Pairs {
  if (typeof data !== 'object' || data === null || Array.isArray(data)) {
    return { ok: false, says: `${path} holds no key: value lines.` };
  }
  const pairs = new Map<string, string>();
  for (const [key, value] of Object.entries(data)) {
    const written = writtenValue(value);
    if (written === null) return { ok: false, says: `${path}: ${key} has no value we can read.` };
    pairs.set(key, written);
  }
  return { ok: true, pairs };
}

function writtenValue(value: unknown): string | null {
  if (typeof value === 'string' || typeof value === 'number') return String(value);
  // YAML reads yes and no as words, true and false as these.
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value !== 'object' || value === null) return null;
  const parts = Array.isArray(value)
    ? value.map((one) => (typeof one === 'string' ? one : null))
    : Object.entries(value).map(([name, one]) => {
        const part = typeof one === 'object' ? null : writtenValue(one);
        return part === null ? null : `${name} ${part}`;
      });
  return parts.includes(null) ? null : parts.join('; ');
}
