import { describe, expect, test } from 'vitest';
import { blocksToMarkdown } from '../../../src/papers/document/to-markdown';
import { detailsMarkdown } from '../../../src/papers/household/to-markdown';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';
import { mayBeTwice, saidTwice } from '../said-twice';

test('a sentence that stands twice is found, and one that stands once is not', () => {
  const paper =
    '## A\n\nThis is said here for once. This one stands twice here.\n\n## B\n\n- [ ] This one\n  stands twice here.';
  expect(saidTwice(paper)).toEqual([
    { sentence: 'This one stands twice here.', parts: ['A', 'B'] },
  ]);
});

describe.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])('%s', (name) => {
  test('the details say nothing twice but what has a reason to stand in each place', () => {
    const found = saidTwice(detailsMarkdown(planOf(name), english));
    expect(found.filter((one) => !mayBeTwice(one))).toEqual([]);
  });

  test('no sheet says anything twice', () => {
    for (const sheet of sheetsOf(planOf(name), english))
      expect(saidTwice(blocksToMarkdown(sheet.blocks)), sheet.id).toEqual([]);
  });
});
