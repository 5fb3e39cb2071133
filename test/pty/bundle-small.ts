import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { atFirstUse } from '../../src/build/at-first-use.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Bundle the small program as the real one is bundled; gives the path of the file to run. */
export async function bundleSmall(name: string): Promise<string> {
  const outfile = join(mkdtempSync(join(tmpdir(), 'lampkeeper-small-')), 'small.mjs');
  await build({
    absWorkingDir: root,
    entryPoints: [join('test/pty', name)],
    outfile,
    bundle: true,
    platform: 'node',
    target: 'node20',
    format: 'esm',
    minify: true,
    jsx: 'automatic',
    logLevel: 'error',
    define: { 'process.env.NODE_ENV': '"production"' },
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
    plugins: [
      atFirstUse(root),
      {
        name: 'empty-devtools',
        setup(b) {
          b.onResolve({ filter: /^react-devtools-core$/ }, () => ({ path: 'e', namespace: 'e' }));
          b.onLoad({ filter: /.*/, namespace: 'e' }, () => ({ contents: 'export default {};' }));
        },
      },
    ],
  });
  return outfile;
}
