import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');

/** True when there is no bundle, or a source is newer than the moment the bundle was begun. */
export function isStale() {
  try {
    const built = Number(readFileSync(join(root, 'dist/stamp'), 'utf8'));
    statSync(join(root, 'dist/program/main.mjs'));
    const sources = ['package.json', 'src', 'questions'].map((name) => join(root, name));
    return sources.some((path) => newest(path) > built);
  } catch {
    return true;
  }
}

function newest(path) {
  const here = statSync(path);
  if (!here.isDirectory()) return here.mtimeMs;
  return readdirSync(path).reduce(
    (latest, name) => Math.max(latest, newest(join(path, name))),
    here.mtimeMs,
  );
}
