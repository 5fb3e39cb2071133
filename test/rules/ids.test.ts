import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import interview from '#compiled/questions.js';

const root = join(import.meta.dirname, '../../src/rules');
const files = readdirSync(root, { recursive: true, encoding: 'utf8' }).filter((f) =>
  f.endsWith('.ts'),
);
const questions = new Map(interview.questions.map((q) => [q.id, q]));

/** Question ids and choice ids that a rule's source names, by the ways rules read facts. */
function named(source: string): { id: string; choices: string[] }[] {
  const quoted = (text: string) => [...text.matchAll(/'([^']+)'/g)].map((m) => m[1]!);
  const calls = [...source.matchAll(/facts\.(?:is|has)\(([^.()]*?)\)/gs)]
    .map((m) => quoted(m[1]!))
    .filter((all) => all.length > 0 && questions.has(all[0]!))
    .map(([id, ...choices]) => ({ id: id!, choices }));
  const singles = [
    ...source.matchAll(/facts\.(?:told|open|number|value|list|applies)\(\s*'([^']+)'/g),
    ...source.matchAll(/ifOpen\(\s*\w+(?:\.facts)?,\s*'([^']+)'/g),
    ...source.matchAll(/facts\.(?:is|has)\(\s*'([^']+)'/g),
  ].map((m) => ({ id: m[1]!, choices: [] }));
  const saids = [...source.matchAll(/id: '([^']+)',\s*choices: \[([^\]]*)\]/gs)].map((m) => ({
    id: m[1]!,
    choices: quoted(m[2]!),
  }));
  const devices = [...source.matchAll(/device\(home, \[([^\]]*)\]/gs)].map((m) => ({
    id: 'medical-devices',
    choices: quoted(m[1]!),
  }));
  return [...calls, ...singles, ...saids, ...devices];
}

const all = files.flatMap((file) =>
  named(readFileSync(join(root, file), 'utf8')).map((one) => ({ file, ...one })),
);

describe('what the rules ask of the answers', () => {
  it('is found in the sources at all', () => {
    expect(all.length).toBeGreaterThan(200);
  });

  it('names only questions that are asked', () => {
    expect(all.filter(({ id }) => !questions.has(id))).toEqual([]);
  });

  it('names only choices that are offered', () => {
    const strays = all.flatMap(({ file, id, choices }) => {
      const offered = new Set(questions.get(id)?.choices?.map((c) => c.id));
      return choices.filter((c) => !offered.has(c)).map((c) => `${file}: ${id} has no ${c}`);
    });
    expect(strays).toEqual([]);
  });
});
