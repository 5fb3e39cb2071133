import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import stringWidth from 'string-width';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { atFirstUse } from '../../src/build/at-first-use.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'at-first-use-'));
afterAll(() => rmSync(folder, { recursive: true }));

const outfile = join(folder, 'width.mjs');
beforeAll(() =>
  build({
    stdin: { contents: "export { default } from 'string-width';", resolveDir: root },
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    plugins: [atFirstUse(root)],
  }),
);

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
  const { default: width } = (await import(pathToFileURL(outfile).href)) as {
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
