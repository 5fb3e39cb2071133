import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { furnaceOnly } from '../fixtures/quick-homes';
import { runHere } from './run-here';
import { runProgram } from './run-program';

const place = mkdtempSync(join(tmpdir(), 'lampkeeper-pictures-'));
writeFileSync(join(place, 'oak.home.yaml'), furnaceOnly('oak'));

const pictures = (locale: string, ...args: string[]) =>
  runHere(place, ['pictures', ...args], { LC_ALL: locale, TERM: 'xterm' });

test('are drawn in blocks or in letters, by what the terminal shows, in 80 columns', async () => {
  const { code, out } = await pictures('C.UTF-8', 'oak');
  expect(code).toBe(0);
  expect(out).toContain('█');
  const plain = (await pictures('C', 'oak')).out;
  expect(plain).not.toMatch(/[▀-▟●]/);
  for (const line of `${out}\n${plain}`.split('\n'))
    expect(line.length, line).toBeLessThanOrEqual(80);
});

test('with --plain are lines of figures', async () => {
  const { out } = await pictures('C.UTF-8', 'oak', '--plain');
  expect(out).toMatch(/^- B\*; Price \$1,650; How much of the job 100%$/m);
  expect(out).not.toContain('█');
});

test('take one home', async () => {
  expect((await pictures('C')).code).toBe(2);
  expect(runProgram(place, ['pictures']).code).toBe(2);
  expect(await pictures('C', 'nobody.home.yaml')).toMatchObject({ code: 1, out: '' });
});
