import { expect, test } from 'vitest';
import { compareLines } from '../../src/faces/compare-lines';
import type { SaidChanges } from '../../src/plan/changes/said-changes';

const said: SaidChanges = {
  rows: [
    { name: 'Price', before: '$900.', after: '$1,200.', changed: true },
    {
      name: 'On a hard day',
      before: 'About 20 h, careful count 14 h on the fuel counted today. You want 24 h.',
      after: 'About 3 days 12 h.',
      changed: true,
    },
    { name: 'Left out', before: 'Nothing.', after: 'Nothing.', changed: false },
  ],
  come: ['Keep the generator outdoors.'],
  go: [],
  nothing: null,
  basis: 'Made up.',
};
const sides = { before: 'Now', after: 'What if' };

test('in columns nothing is wider than told, and a number stays with its unit', () => {
  for (const width of [64, 72, 80, 100]) {
    const lines = compareLines(said, { width, stand: 'columns', sides });
    for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
    expect(lines.join('\n')).not.toMatch(/\d\s*\n\s*(h|days)\b/);
  }
});

test('one below the other each sentence says which side it is of, and what is the same is said once', () => {
  expect(compareLines(said, { width: 200, stand: 'stacked', sides })).toEqual([
    'Price:',
    '  Now: $900.',
    '  What if: $1,200.',
    'On a hard day:',
    '  Now: About 20 h, careful count 14 h on the fuel counted today. You want 24 h.',
    '  What if: About 3 days 12 h.',
    'Left out:',
    '  Now and what if: Nothing.',
    '',
    'Cautions that come:',
    '- Keep the generator outdoors.',
    '',
    'Made up.',
  ]);
});

test('in brief what is the same stands below what differs', () => {
  const lines = compareLines(said, { width: 80, stand: 'columns', sides, brief: true });
  expect(lines).toContain('Left out, the same: Nothing.');
});
