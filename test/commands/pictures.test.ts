import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { folder } from '../households/read-household';

const program = join(import.meta.dirname, '../../src/bin/lampkeeper.mjs');
const place = mkdtempSync(join(tmpdir(), 'lampkeeper-pictures-'));
copyFileSync(join(folder, 'tower-six.home.yaml'), join(place, 'oak.home.yaml'));

const pictures = (locale: string, ...args: string[]) =>
  spawnSync(process.execPath, [program, 'pictures', ...args], {
    cwd: place,
    encoding: 'utf8',
    env: { ...process.env, LC_ALL: locale, TERM: 'xterm' },
  });

test('are drawn in blocks or in letters, by what the terminal shows, in 80 columns', () => {
  const { status, stdout } = pictures('C.UTF-8', 'oak');
  expect(status).toBe(0);
  expect(stdout).toContain('█');
  const plain = pictures('C', 'oak').stdout;
  expect(plain).not.toMatch(/[▀-▟●]/);
  for (const line of `${stdout}\n${plain}`.split('\n'))
    expect(line.length, line).toBeLessThanOrEqual(80);
});

test('with --plain are lines of figures', () => {
  const { stdout } = pictures('C.UTF-8', 'oak', '--plain');
  expect(stdout).toMatch(/^- E\*; Price \$860; How much of the job 100%$/m);
  expect(stdout).not.toContain('█');
});

test('take one home', () => {
  expect(pictures('C').status).toBe(2);
  expect(pictures('C', 'nobody.home.yaml')).toMatchObject({ status: 1, stdout: '' });
});
