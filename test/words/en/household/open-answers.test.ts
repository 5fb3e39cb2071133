import { expect, test } from 'vitest';
import type { ToFindOut } from '../../../../src/plan/sureness/worth-finding-out';
import { openAnswers } from '../../../../src/words/en/household/open-answers';

const toFind = (says: string, decides: ToFindOut['decides']): ToFindOut => ({
  question: 'x',
  says,
  how: `Look for ${says}.`,
  safety: false,
  changes: 1,
  decides,
});

test('what several answers decide alike is said once, where the first of them stands', () => {
  const routes = { code: 'could-forbid', routes: ['engine-cords'] } as const;
  const all = [toFind('a', routes), toFind('b', null), toFind('c', routes), toFind('d', null)];
  const lines = openAnswers.findOut(all);
  expect(lines).toHaveLength(3);
  expect(lines[0]).toMatch(/^a\. Look for a\. c\. Look for c\. Each of these: it /);
  expect(lines[1]).toBe('b. Look for b.');
  expect(openAnswers.findOut([all[0]!])[0]).toMatch(/^a\. It .*\. Look for a\.$/);
});

test('what was taken for one reason stands together, with the reason once', () => {
  const taken = (says: string, because: string) =>
    ({ code: 'open-answer', question: 'x', says, assumed: '3', because }) as never;
  expect(
    openAnswers.assumed([taken('A', 'We look.'), taken('B', 'We ask'), taken('C', 'We look.')]),
  ).toEqual(['A: 3; C: 3. We look.', 'B: 3. We ask.']);
});
