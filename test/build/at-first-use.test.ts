import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import stringWidth from 'string-width';
import { afterAll, expect, test, vi } from 'vitest';
import { atFirstUse } from '../../src/build/at-first-use.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'at-first-use-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** A package as the program holds it; gives where it stands. */
async function bundled(name: string): Promise<string> {
  const outfile = join(folder, `${name}.mjs`);
  await build({
    stdin: { contents: `export { default } from '${name}';`, resolveDir: root },
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    plugins: [atFirstUse(root)],
  });
  return pathToFileURL(outfile).href;
}

test('what takes long to make is made at the first letter beyond ASCII, once', async () => {
  const intl: { Segmenter: typeof Intl.Segmenter } = Intl;
  const { Segmenter } = intl;
  let made = 0;
  intl.Segmenter = class extends Segmenter {
    constructor() {
      super();
      made += 1;
    }
  };
  const { default: width } = (await import(await bundled('string-width'))) as {
    default: typeof stringWidth;
  };
  expect(width('backup power')).toBe(12);
  expect(made).toBe(0);
  for (const text of [
    '40 °C',
    '5 × 2 kWh',
    '👩‍👩‍👧',
    '⚡',
    '🇺🇸',
    '한국',
    '電気',
    'é',
    '\u001b[1mA\u001b[0m',
  ]) {
    expect(width(text)).toBe(stringWidth(text));
  }
  expect(made).toBe(1);
  intl.Segmenter = Segmenter;
});

test('the layout of the screen is fetched from nowhere', async () => {
  const fetches = vi.spyOn(globalThis, 'fetch');
  const { default: layout } = (await import(await bundled('yoga-layout'))) as {
    default: typeof import('yoga-layout').default;
  };
  const node = layout.Node.create();
  node.setWidth(80);
  node.calculateLayout(undefined, undefined);
  expect(node.getComputedWidth()).toBe(80);
  expect(fetches).not.toHaveBeenCalled();
  fetches.mockRestore();
});

test('a package that says it otherwise stops the build', async () => {
  const at = join(folder, 'node_modules/string-width');
  mkdirSync(at, { recursive: true });
  writeFileSync(join(at, 'index.js'), 'export default (text) => text.length;');
  const updated = build({
    stdin: { contents: "import 'string-width';", resolveDir: folder },
    write: false,
    bundle: true,
    format: 'esm',
    logLevel: 'silent',
    plugins: [atFirstUse(folder)],
  });
  await expect(updated).rejects.toThrow('no longer says: const segmenter');
});
