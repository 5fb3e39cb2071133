import { expect, test } from 'vitest';
import type { Block } from '../../../src/papers/document/block';
import { blocksToMarkdown } from '../../../src/papers/document/to-markdown';

const items = ['Which breaker feeds what?', 'x'.repeat(60), 'Do circuits share a neutral?'];
const boxes: Block = { kind: 'boxes', items };

test('short things to tick share a line where a page is full, each with its box, and none is lost', () => {
  const lines = blocksToMarkdown([boxes], true).split('\n');
  expect(lines).toHaveLength(2);
  expect(lines[0]).toBe('- [ ] Which breaker feeds what?  [ ] Do circuits share a neutral?');
  expect(blocksToMarkdown([boxes]).split('\n')).toHaveLength(items.length);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
});

test('steps have an order, so each keeps its line', () => {
  const steps: Block = { kind: 'steps', items: ['Main OFF.', 'Inlet ON.'], boxes: true };
  expect(blocksToMarkdown([steps], true).split('\n')).toHaveLength(2);
});

test('a line in bold goes on the text before it where both fit', () => {
  const say = (text: string, strong = false): Block => ({ kind: 'say', text, strong });
  const both = [say('Hang this on the door.'), say('DRAFT: this may change.', true)];
  expect(blocksToMarkdown(both, true)).toBe('Hang this on the door. **DRAFT: this may change.**');
  expect(blocksToMarkdown(both)).toContain('\n\n**DRAFT');
  const long = [say('word '.repeat(14).trim()), say('DRAFT: this may change.', true)];
  expect(blocksToMarkdown(long, true)).toContain('\n**DRAFT');
});
