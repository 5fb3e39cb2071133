import { describe, expect, test } from 'vitest';
import { widthOf } from '../../../../src/faces/screen/line';
import { planLines } from '../../../../src/faces/screen/plan/plan-lines';
import { planMarkdown } from '../../../../src/papers/household/to-markdown';
import { english } from '../../../../src/words/en';
import { planOf } from '../../../households/read-household';

const texts = ['birch-street', 'tower-six', 'ridge-road'].map((name) =>
  planMarkdown(planOf(name), english),
);
const widths = [30, 40, 52, 60, 72, 80, 99, 100, 101, 120, 139, 160, 200];

describe.each(widths)('the plan in %i columns', (columns) => {
  test('is never wider, holds no raw mark and no broken table', () => {
    for (const text of texts) {
      const lines = planLines(text, columns);
      expect(Math.max(...lines.map(widthOf))).toBeLessThanOrEqual(columns);
      const all = lines.join('\n');
      expect(all).not.toMatch(/\*\*|^#|\|---|&amp;|&#39;|&quot;/m);
      // Every line of a drawn table has the width of the first one.
      const table = lines.filter((line) => /[│├└]/.test(line));
      for (const line of table) expect(line.trimEnd()).toMatch(/[│┤┘]$/);
    }
  });

  test('keeps every word of the summary', () => {
    const words = (text: string) =>
      new Set(
        text
          .replace(/[^A-Za-z0-9$]+/g, ' ')
          .split(' ')
          .filter((w) => w.length > 4 && w.length < 25),
      );
    for (const text of texts) {
      const shown = words(planLines(text, columns).join(' '));
      const lost = [...words(text)].filter((word) => !shown.has(word));
      expect(lost).toEqual([]);
    }
  });
});
