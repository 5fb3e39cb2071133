// `npm run bench`: speed as ratios against `node -e 0` and plain sums on the same machine, in one run.
import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const root = join(dirname(fileURLToPath(import.meta.url)), '../..');
mkdirSync(join(root, 'dist/build'), { recursive: true });
await build({
  absWorkingDir: root,
  entryPoints: ['test/bench/bench.ts'],
  outfile: 'dist/build/bench.mjs',
  bundle: true,
  platform: 'node',
  target: 'node20',
  format: 'esm',
  packages: 'external',
  logLevel: 'warning',
});
const run = spawnSync(
  process.execPath,
  ['--expose-gc', 'dist/build/bench.mjs', ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: 'inherit',
  },
);
process.exitCode = run.status ?? 1;
