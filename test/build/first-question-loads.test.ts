import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

const program = join(import.meta.dirname, '../../dist/program');
const text = (piece: string) => readFileSync(join(program, piece), 'utf8');
const pieces = existsSync(program)
  ? readdirSync(program).filter((name) => name.endsWith('.mjs'))
  : [];

/** A piece and all that it imports at once; what it imports later stays on the disk. */
function loadedWith(piece: string, seen = new Set<string>()): Set<string> {
  if (seen.has(piece)) return seen;
  seen.add(piece);
  for (const found of text(piece).matchAll(/(?:from|import)\s*"\.\/([^"]+\.mjs)"/g))
    loadedWith(found[1]!, seen);
  return seen;
}

/** Words that stand in one source alone, to know its piece by. */
const heavy = {
  'the schema library': 'ZodError',
  'the YAML reader': 'YAMLParseError',
  'what the rules say': 'Headache, dizziness or an alarm can mean carbon monoxide',
  'the words of the summary': 'What can hurt here most:',
} as const;

test('up to the first question neither schemas, nor YAML, nor words of the papers are loaded', () => {
  const entries = ['interview-command', 'run-screen', 'run-lines'].map(
    (entry) => pieces.find((name) => name.startsWith(`${entry}-`))!,
  );
  const first = new Set(['main.mjs', ...entries].flatMap((entry) => [...loadedWith(entry)]));
  for (const [what, mark] of Object.entries(heavy)) {
    expect(
      pieces.some((piece) => text(piece).includes(mark)),
      `${what} is in the program`,
    ).toBe(true);
    const where = [...first].filter((piece) => text(piece).includes(mark));
    expect(where, `${what}: import it where it is needed, with import()`).toEqual([]);
  }
});
