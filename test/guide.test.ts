import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';

const root = join(import.meta.dirname, '..');
const guide = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
const paths = (text: string) =>
  [...text.matchAll(/`([a-z-]+\/[\w/.-]+\.(?:tsx?|mjs|yaml))`/g)].map((found) => found[1]!);
/** A place to put a name of one's own: `src/physics/NAME.ts`. */
const holder = /[A-Z]{2,}/;
const homes = ['', 'src', 'src/tables', 'src/commands', 'src/plan', 'questions/en'];
const isThere = (path: string) => homes.some((home) => existsSync(join(root, home, path)));

describe('DEVELOPERS.md', () => {
  test('names files that are there: mend the guide where one moved', () => {
    expect(paths(guide).length).toBeGreaterThan(60);
    expect(paths(guide).filter((path) => !holder.test(path) && !isThere(path))).toEqual([]);
  });

  test('counts the files of its walks right', () => {
    const walks = guide.split('## Two walks')[1]!.split('\n## ')[0]!;
    for (const walk of walks.split('\n**').slice(1)) {
      const parts = walk.split('\n- ').slice(1);
      for (const part of parts) {
        const [line] = part.split('\n');
        expect(paths(line!).length, line).toBe(Number(/\((\d+)\):/.exec(line!)![1]));
      }
      const all = new Set(parts.flatMap(paths));
      expect(all.size, walk.slice(0, 60)).toBe(Number(/: (\d+) files/.exec(walk)![1]));
    }
  });
});
