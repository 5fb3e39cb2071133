import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { sayFaults } from '../../src/store/home-file';
import { readHome } from '../../src/store/read-home';
import { readYamlFile } from '../../src/store/read-yaml-file';

const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-hostile-'));
afterAll(() => rmSync(folder, { recursive: true }));

const top = 'lampkeeperHome: 1\nanswers:\n';

function saysOf(content: string | Buffer): string {
  const path = join(folder, 'x.home.yaml');
  writeFileSync(path, content);
  readYamlFile(path);
  const read = readHome(path, interview);
  return read.ok ? 'sound' : sayFaults('x', read.faults);
}

const many = (count: number, line: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => line(i)).join('\n');

test.each<[string, string | Buffer, RegExp]>([
  ['2 KB of list marks', '- '.repeat(1024), /^x:1:\d+: lists are nested deeper/],
  ['100 KB of brackets', '['.repeat(100_000), /nested deeper/],
  ['braces a line each', '{\n'.repeat(5000), /^x:41:1: lists are nested deeper/],
  ['maps deep by indents', many(400, (i) => `${' '.repeat(i)}a:`), /nested deeper/],
  ['UTF-16 with its mark', Buffer.from(`\ufeff${top}`, 'utf16le'), /UTF-16.*save it as UTF-8/],
  ['UTF-16 without', Buffer.from(top, 'utf16le'), /UTF-16/],
  ['a zero byte', `${top}  goal-hours: 2\0`, /zero bytes/],
  ['another encoding', Buffer.from(`${top}  # caf\xe9`, 'latin1'), /not in UTF-8/],
  ['a mark before UTF-8', `\ufeff${top}  goal-hours: 24\n`, /^sound$/],
  ['Windows line ends', `${top}  goal-hours: 24\n`.replaceAll('\n', '\r\n'), /^sound$/],
  ['a list for a key', `${top}  ? [a, b]\n  : 5\n`, /no question is called "\[\.\.\.\]"/],
  ['a form that is no number', 'lampkeeperHome: [1]\nanswers: {}\n', /Write "lampkeeperHome: 1"/],
  ['a later version', 'lampkeeperHome: 2\nanswers: {}\n', /form 2; this program reads form 1/],
])('%s', (_, content, says) => {
  expect(saysOf(content)).toMatch(says);
});

test('escapes and marks of direction in keys and values are shown, not sent', () => {
  for (const bad of ['\u001b[31m', '\u202e', '\u0007', '\u2028', '\u009b']) {
    const said = saysOf(`${top}  "${bad}key": 1\n  goal-hours: "${bad}"\n`);
    expect(said).not.toContain(bad);
  }
  expect(saysOf(`${top}  goal-hours: "\u202e12"\n`)).toContain('<U+202E>12');
});

test('the first twenty faults are told, and how many more there are', () => {
  const said = saysOf(`${top}${many(160, (i) => `  k${i}: 1`)}\n`).split('\n');
  expect(said).toHaveLength(21);
  expect(said.at(-1)).toBe('and 140 more.');
});

test('time grows with the length of the file, not with its square', () => {
  const ms = (count: number) => {
    const content = `${top}${many(count, (i) => `  k${i}: 1`)}\n`;
    const start = process.cpuUsage();
    saysOf(content);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  };
  for (let warm = 0; warm < 3; warm++) ms(1500);
  const [short, long] = [ms(1500), ms(12_000)];
  // Eight times as long: a square would take sixty-four times as long.
  expect(long / short).toBeLessThan(25);
});

test.skipIf(process.platform === 'win32')('a pipe, a device and a folder are refused', () => {
  const pipe = join(folder, 'pipe.yaml');
  execFileSync('mkfifo', [pipe]);
  const device = join(folder, 'zero.yaml');
  symlinkSync('/dev/zero', device);
  for (const path of [pipe, device]) {
    const read = readHome(path, interview);
    expect(read.ok ? '' : read.faults[0]!.says).toMatch(/a pipe or a device, not a file/);
  }
});
