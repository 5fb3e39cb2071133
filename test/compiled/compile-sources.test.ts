import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { compileSources } from './compile-sources.mjs';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(realpathSync(tmpdir()), 'compiled-'));
  write('package.json', '{ "type": "module" }');
  write('src/watts/index.ts', 'export const watts: number = 5;');
  write('src/twice.ts', "import { watts } from './watts';\nexport const twice = 2 * watts;");
  write(
    'test/says.ts',
    "export { twice } from '../src/twice';\nexport const here = import.meta.url;",
  );
});
afterEach(() => rmSync(root, { recursive: true }));

function write(path: string, text: string) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}

let asked = 0;
/** What a module gives, loaded anew. */
async function gives(path: string): Promise<Record<string, unknown>> {
  const twin = (await compileSources(root)).get(join(root, path))!;
  asked += 1;
  return import(`${pathToFileURL(twin).href}?${asked}`);
}

describe('compiled sources', () => {
  test('import each other, and know where they were written', async () => {
    const here = pathToFileURL(join(root, 'test/says.ts')).href;
    expect(await gives('test/says.ts')).toMatchObject({ twice: 10, here });
  });

  test('are compiled anew when their text changed, or where an import leads', async () => {
    expect(await gives('src/watts/index.ts')).toMatchObject({ watts: 5 });
    write('src/watts/index.ts', 'export const watts: number = 17;');
    expect(await gives('src/watts/index.ts')).toMatchObject({ watts: 17 });
    rmSync(join(root, 'src/watts'), { recursive: true });
    write('src/watts.ts', 'export const watts = 21;');
    expect(await gives('src/twice.ts')).toMatchObject({ twice: 42 });
  });

  test('refuse what the runner can do only to modules of its own', async () => {
    // In two pieces, or this file would be refused.
    const mock = `vi.${'mock'}('../src/twice');`;
    write('test/mocks.test.ts', `import { vi } from 'vitest';\n${mock}`);
    await expect(compileSources(root)).rejects.toThrow('works on no module here');
  });
});
