import { sayFaults } from '../../store/home-file';
import { readYamlFile } from '../../store/read-yaml-file';
import type { Pairs } from './read-pairs';

/** `key: value` pairs of a YAML or JSON file. A list or a mapping of quantities becomes "name quantity; ...". */
export function readPairsFile(path: string): Pairs {
  const file = readYamlFile(path);
  return file.ok ? pairsOf(path, file.data) : { ok: false, says: sayFaults(path, file.faults) };
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
