import { expect, test } from 'vitest';
import { aheadBy } from '../../../src/commands/talk/ahead';
import type { ShownDraft } from '../../../src/faces/shown-draft';
import type { Answers } from '../../../src/interview/answers';

/** Three steps for each, written down. */
function threeSteps() {
  const taken: string[] = [];
  const ended = new Map<string, number>();
  return {
    taken,
    draftOf(answers: Answers) {
      taken.push(`${answers.a} sums`);
      return {} as ShownDraft;
    },
    *nextInSteps(answers: Answers) {
      const name = String(answers.a);
      while ((ended.get(name) ?? 0) < 2) {
        ended.set(name, (ended.get(name) ?? 0) + 1);
        taken.push(name);
        yield undefined;
      }
      taken.push(`${name} done`);
      return { code: 'enough', sharpen: 0, again: [] } as const;
    },
  };
}

test('what could be answered is worked out one after the other, and then nothing is left', () => {
  const all = threeSteps();
  const ahead = aheadBy(all);
  expect(ahead.step()).toBe(false);
  ahead.begin([{ a: 1 }, { a: 2 }]);
  let count = 0;
  while (ahead.step()) count += 1;
  expect(all.taken).toEqual(['1', '1', '1 done', '2', '2', '2 done']);
  expect(count).toBe(5);
  expect(ahead.step()).toBe(false);
});

test('what is leaned towards goes first, and what was begun is gone on with behind it', () => {
  const all = threeSteps();
  const ahead = aheadBy(all);
  ahead.begin([{ a: 1 }]);
  ahead.step();
  ahead.lean({ a: 7 });
  while (ahead.step());
  expect(all.taken).toEqual(['1', '7 sums', '7', '7', '7 done', '1', '1 done']);
});

test('of several that are leaned towards the newest counts, and with another question none', () => {
  const all = threeSteps();
  const ahead = aheadBy(all);
  ahead.lean({ a: 1 });
  ahead.lean({ a: 2 });
  ahead.step();
  ahead.begin([{ a: 3 }]);
  ahead.step();
  expect(all.taken).toEqual(['2 sums', '3']);
});

test('what cannot be found is passed over', () => {
  const ahead = aheadBy({
    ...threeSteps(),
    // biome-ignore lint/correctness/useYield: it fails before its first step
    *nextInSteps() {
      throw new Error('no sums');
    },
  });
  ahead.begin([{ a: 1 }, { a: 2 }]);
  expect([ahead.step(), ahead.step()]).toEqual([true, false]);
});

test('where the sums fail nothing is worked out ahead', () => {
  const ahead = aheadBy({
    ...threeSteps(),
    draftOf() {
      throw new Error('no sums');
    },
  });
  ahead.lean({ a: 1 });
  expect(ahead.step()).toBe(false);
});
