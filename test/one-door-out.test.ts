import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

/** Write sequences of their own to a terminal and nothing that a file or a person gave; what the screen draws passes `line.ts`. */
const OWN_SEQUENCES = [
  'faces/screen/surface.ts',
  'faces/screen/open-canvas.tsx',
  'faces/screen/terminal-modes.ts',
  'commands/talk/shared-screen.ts',
  'commands/progress.ts',
];

const files = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .map((file) => file.replaceAll('\\', '/'))
  .filter((file) => /\.tsx?$/.test(file) && !file.startsWith('build/'));

test('whatever is printed has been made visible first', () => {
  const printing = files.flatMap((file) =>
    readFileSync(join('src', file), 'utf8')
      .split('\n')
      .filter((line) => /\bstd(out|err)\.write\(|\bconsole\./.test(line))
      .map((line) => ({ file, line: line.trim() })),
  );
  expect(printing.length).toBeGreaterThan(5);
  const raw = printing.filter(
    ({ file, line }) => !line.includes('visible(') && !OWN_SEQUENCES.includes(file),
  );
  expect(raw).toEqual([]);
});
