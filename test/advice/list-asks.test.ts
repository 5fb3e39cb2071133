import { afterEach, expect, test, vi } from 'vitest';
import interview from '#compiled/questions.js';
import { AskedFor } from '../../src/advice/asked-for';
import { bankOf } from '../../src/advice/effect-of-answers';
import { likelyAnswers } from '../../src/advice/likely-answers';
import { liveAdvice } from '../../src/advice/live-advice';
import { sameMakings } from '../../src/advice/makings';
import type { Answers } from '../../src/interview/answers';
import { completeHome, likelyHome } from '../complete-home';
import { answersOf } from '../households/read-household';

const AS_OF = '2026-11-28';

afterEach(() => vi.restoreAllMocks());

/** What is asked for the first time while `work` runs. */
function askedFirst(work: () => void): string[] {
  const found = new Set<string>();
  for (const how of ['get', 'has'] as const) {
    const before = AskedFor.prototype[how] as (id: string) => unknown;
    vi.spyOn(AskedFor.prototype, how).mockImplementation(function (this: AskedFor, id: string) {
      if (!this.asked.has(id)) found.add(id);
      return before.call(this, id) as never;
    });
  }
  work();
  vi.restoreAllMocks();
  return [...found];
}

test('the list asks for no answer that its trial was not made of: else two homes would share one advice', () => {
  const homes = [
    ...['birch-street', 'tower-six', 'ridge-road', 'mill-lane'].map(answersOf),
    ...[1, 2, 3, 4, 5, 6].flatMap((seed) => [likelyHome(seed), completeHome(seed)]),
  ];
  expect(askedFirst(() => bankOf(interview, AS_OF).trialOf(homes[0]!)).length).toBeGreaterThan(50);
  for (const answers of homes) {
    const trial = bankOf(interview, AS_OF).trialOf(answers);
    expect(askedFirst(() => liveAdvice(trial))).toEqual([]);
  }
});

test('what was weighed before does not change what is advised beside the question', () => {
  const bank = bankOf(interview, AS_OF);
  const bought = (answers: Answers, of = bank) => {
    const { route } = liveAdvice(of.trialOf(answers));
    return [route.kind, route.way, route.costUsd.value];
  };
  const flat = answersOf('tower-six');
  const now = bank.trialOf(flat);
  let moved = 0;
  for (const id of ['phone-works', 'cook-without', 'heat-cold', 'people-risk', 'heat-second']) {
    const question = interview.questions.find((one) => one.id === id)!;
    for (const { answer } of likelyAnswers(question, bank.knownOf(flat)).slice(0, 3)) {
      const then = { ...flat, [id]: answer };
      const alone = bought(then, bankOf(interview, AS_OF));
      expect(bought(then), `${id} ${answer}`).toEqual(alone);
      if (sameMakings(now, bank.trialOf(then))) expect(alone).toEqual(bought(flat));
      else moved += 1;
    }
  }
  expect(moved).toBeGreaterThan(0);
});
