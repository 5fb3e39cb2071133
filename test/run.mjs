// `node test/run.mjs bench/bench.ts ...`: bundles a program of this folder as the build does, and runs it.
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const [program, ...wished] = process.argv.slice(2);
const outfile = `dist/build/${basename(program, '.ts')}.mjs`;
mkdirSync(join(root, 'dist/build'), { recursive: true });
await build({
  absWorkingDir: root,
  entryPoints: [join('test', program)],
  outfile,
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  jsx: 'automatic',
  packages: 'external',
  logLevel: 'warning',
});
const run = spawnSync(process.execPath, ['--expose-gc', join(root, outfile), ...wished], {
  stdio: 'inherit',
  // A drawing library keeps a record of every frame otherwise.
  env: { ...process.env, NODE_ENV: 'production' },
});
process.exitCode = run.status ?? 1;
