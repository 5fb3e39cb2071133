import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import type { Load, Season } from '../../../src/home/home';
import { onceForEach } from '../../../src/home/loads/once-for-each';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { answersOf } from '../../households/read-household';

const { loads } = homeFromAnswers(interview, answersOf('birch-street'), '2026-11-28');

test('the very same loads in the same order are worked out once a set of seasons, and any other anew', () => {
  const made: string[] = [];
  const count = onceForEach((some: readonly Load[], of: readonly Season[]) => {
    made.push(`${some.length} ${of.join()}`);
    return some.length;
  });
  expect([count(loads, ['winter']), count([...loads], ['winter'])]).toEqual([
    loads.length,
    loads.length,
  ]);
  expect(made).toEqual([`${loads.length} winter`]);
  count(loads, ['winter', 'summer']);
  count(loads.slice(1), ['winter']);
  count([...loads].reverse(), ['winter']);
  count([{ ...loads[0]! }, ...loads.slice(1)], ['winter']);
  count([], ['winter']);
  count([], ['winter']);
  expect(made).toHaveLength(6);
});
