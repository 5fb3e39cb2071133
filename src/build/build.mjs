// Builds the program: checks and compiles the data files, then bundles `src/main.ts` in pieces.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { atFirstUse } from './at-first-use.mjs';
import { bundledLicenses } from './bundled-licenses.mjs';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
const dist = join(root, 'dist');

/** Options every bundle shares. */
const common = {
  absWorkingDir: root,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  logLevel: 'warning',
  define: { 'process.env.NODE_ENV': '"production"' },
};

/** What the program must not carry: a tool that opens sockets, and one that starts programs to ask for a size. */
const STAND_INS = {
  './devtools.js': '',
  'terminal-size': `export default () => ({
    columns: process.stdout.columns || 80,
    rows: process.stdout.rows || 24,
  });`,
};

const standIns = {
  name: 'stand-ins',
  setup(b) {
    b.onResolve({ filter: /^(\.\/devtools\.js|terminal-size)$/ }, ({ path }) => ({
      path,
      namespace: 'stand-in',
    }));
    b.onLoad({ filter: /.*/, namespace: 'stand-in' }, ({ path }) => ({
      contents: STAND_INS[path],
    }));
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
  const { metafile } = await build({
    ...common,
    metafile: true,
    entryPoints: { main: 'src/main.ts', 'draft-worker': 'src/commands/talk/draft-worker.ts' },
    outdir: 'dist/program',
    outExtension: { '.js': '.mjs' },
    splitting: true,
    minify: true,
    legalComments: 'none',
    banner,
    plugins: [standIns, atFirstUse(root)],
  });
  const licenses = bundledLicenses(root, Object.keys(metafile.inputs));
  writeFileSync(join(dist, 'program/LICENSES.txt'), licenses);
}

const started = Date.now();
mkdirSync(join(dist, 'build'), { recursive: true });
await compileData();
if (!process.argv.includes('--data-only')) {
  await bundleProgram();
  writeFileSync(join(dist, 'stamp'), `${started}\n`);
}
