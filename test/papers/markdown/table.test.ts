import { expect, test } from 'vitest';
import { planMarkdown } from '../../../src/papers/household/to-markdown';
import { table } from '../../../src/papers/markdown/table';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

test('a table that fits 80 columns is a table', () => {
  expect(table(['Load', 'Watts'], [['Lamp', '9 W']])).toBe(
    '| Load | Watts |\n|---|---|\n| Lamp | 9 W |',
  );
});

test('one that does not is a line a row, each cell after its head', () => {
  const wide = 'x'.repeat(80);
  expect(table(['Load', 'While it runs', 'When it starts'], [['Lamp', '9 W', wide]])).toBe(
    `- Lamp: while it runs 9 W; when it starts ${wide}.`,
  );
});

test.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])(
  '%s: no table of the summary is wider than 80 columns',
  (name) => {
    const rows = planMarkdown(planOf(name), english)
      .split('\n')
      .filter((line) => line.startsWith('|'));
    expect(rows.length).toBeGreaterThan(5);
    for (const row of rows) expect(row.length, row).toBeLessThanOrEqual(80);
  },
);
