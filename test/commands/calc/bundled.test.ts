import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'esbuild';
import { afterAll, beforeAll, expect, test } from 'vitest';

// Bundled in pieces like the program: packages loaded late behave otherwise there than from source.
const folder = mkdtempSync(join(tmpdir(), 'calc-bundled-'));
afterAll(() => rmSync(folder, { recursive: true }));
const program = join(folder, 'run.mjs');

beforeAll(async () => {
  const src = join(import.meta.dirname, '../../../src');
  const runner = `
    import { calcCommand } from './commands/calc-command';
    import { readArguments } from './commands/read-arguments';
    calcCommand(readArguments(process.argv.slice(2))).then((code) => { process.exitCode = code; });`;
  await build({
    stdin: { contents: runner, resolveDir: src, loader: 'ts' },
    outdir: folder,
    entryNames: 'run',
    outExtension: { '.js': '.mjs' },
    bundle: true,
    splitting: true,
    minify: true,
    platform: 'node',
    format: 'esm',
    logLevel: 'error',
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
  });
});

test('the bundled command reads a file and shows its work', () => {
  const path = join(folder, 'pump.yaml');
  writeFileSync(path, 'gpm: 10\nhead: 203 ft\n');
  const args = [program, 'calc', 'pump-power', '--in', path, '--json'];
  const { steps } = JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8' }));
  expect(steps[0].value).toBeCloseTo(0.513, 3);
});

test('the bundled command exits 2 on a key it does not know, with the words on stderr', () => {
  const args = [program, 'calc', 'pump-power', 'flow=10'];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toContain('no input "flow"');
});
