// Builds the program: checks and compiles the data files, then bundles `src/main.ts` in pieces.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const dist = join(root, 'dist');

/** Options every bundle shares. react-devtools-core is never wanted, so it becomes an empty module. */
const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  logLevel: 'warning',
  define: { 'process.env.NODE_ENV': '"production"' },
};

const empty = {
  name: 'empty-devtools',
  setup(b) {
    b.onResolve({ filter: /^react-devtools-core$/ }, () => ({ path: 'empty', namespace: 'empty' }));
    b.onLoad({ filter: /.*/, namespace: 'empty' }, () => ({ contents: 'export default {};' }));
  },
};

/** Packages written for CommonJS call require() for Node's own modules; an ES module has none. */
const banner = {
  js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
};

async function compileData() {
  const out = join(dist, 'build/compile.mjs');
  await build({
    ...common,
    entryPoints: ['src/build/compile.ts'],
    outfile: out,
    packages: 'external',
  });
  const { compile } = await import(pathToFileURL(out).href);
  await compile(root);
}

async function bundleProgram() {
  rmSync(join(dist, 'program'), { recursive: true, force: true });
  await build({
    ...common,
    entryPoints: { main: 'src/main.ts' },
    outdir: 'dist/program',
    outExtension: { '.js': '.mjs' },
    splitting: true,
    minify: true,
    legalComments: 'none',
    banner,
    plugins: [empty],
  });
}

const started = Date.now();
mkdirSync(join(dist, 'build'), { recursive: true });
await compileData();
if (!process.argv.includes('--data-only')) {
  await bundleProgram();
  writeFileSync(join(dist, 'stamp'), `${started}\n`);
}
