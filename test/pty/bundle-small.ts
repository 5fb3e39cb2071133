import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { atFirstUse } from '../../src/build/at-first-use.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * Bundle the small program as the real one is bundled; gives the path of the file to run. It is kept, with the times of
 * all that it is made of, until one of them changes.
 */
export async function bundleSmall(name: string): Promise<string> {
  const kept = join(root, 'dist/small', name.replace(/\.ts$/, '.mjs'));
  const list = `${kept}.times.json`;
  if (isOf(list)) return kept;
  mkdirSync(dirname(kept), { recursive: true });
  // Other test files may want it at the same moment: each is there whole or not at all.
  const [outfile, times] = [`${kept}.${process.pid}`, `${list}.${process.pid}`];
  const { metafile } = await build({
    metafile: true,
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
  const files = [...Object.keys(metafile.inputs).map((file) => join(root, file)), ...MAKERS];
  writeFileSync(times, JSON.stringify(files.map((file) => [file, changedAt(file)])));
  renameSync(outfile, kept);
  renameSync(times, list);
  return kept;
}

/** What says how it is made. */
const MAKERS = ['test/pty/bundle-small.ts', 'src/build/at-first-use.mjs', 'package-lock.json'].map(
  (file) => join(root, file),
);

/** When a file was changed last, ms; null where there is none, as of what a plugin makes up. */
const changedAt = (file: string): number | null =>
  statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? null;

/** True where there is a list and each file in it is as it was. */
function isOf(list: string): boolean {
  if (changedAt(list) === null) return false;
  const times: [string, number | null][] = JSON.parse(readFileSync(list, 'utf8'));
  return times.every(([file, at]) => changedAt(file) === at);
}
