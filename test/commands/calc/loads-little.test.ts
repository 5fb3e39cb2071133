import { readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { expect, test } from 'vitest';

const src = join(import.meta.dirname, '../../../src');

/** Every file that is loaded with `path` at once: what it imports statically, and so on. Packages by name. */
function loadedWith(path: string, seen = new Set<string>()): Set<string> {
  const name = relative(src, path);
  if (seen.has(name)) return seen;
  seen.add(name);
  const text = readFileSync(path, 'utf8');
  for (const [, typeOnly, from] of text.matchAll(
    /^(?:import|export) (type )?[^;]*?from '([^']+)'/gm,
  )) {
    if (typeOnly) continue;
    if (from!.startsWith('.')) loadedWith(join(dirname(path), `${from}.ts`), seen);
    else seen.add(from!);
  }
  return seen;
}

const climate = 'tables/place/climate.ts';

test('the command loads no table, no yaml and no computation before it knows which', () => {
  const loaded = [...loadedWith(join(src, 'commands/calc-command.ts'))];
  expect(loaded).toContain('commands/calc/registry.ts');
  expect(loaded.filter((name) => /^tables\/|^physics\/|computations|yaml|zod/.test(name))).toEqual(
    [],
  );
});

test('pump-power does not load the climate, and roof-yield does', () => {
  const of = (name: string) => loadedWith(join(src, `commands/calc/computations/${name}.ts`));
  expect(of('roof-yield')).toContain(climate);
  for (const name of [
    'pump-power',
    'wire-size',
    'service-load',
    'sun-position',
    'battery-savings',
  ]) {
    expect(of(name)).not.toContain(climate);
  }
});
