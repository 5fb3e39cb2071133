import { expect, test } from 'vitest';
import { FIGURE_IDS } from '../../../src/plan/explain/figure-ids';
import { title } from '../../../src/words/en/explain/titles';

test('the title of a figure stands alone: it is also the head of the page that works it out', () => {
  for (const id of FIGURE_IDS) expect(title(id)).not.toMatch(/\b[Tt]he same\b/);
});
