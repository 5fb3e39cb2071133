import type { Answers } from '../interview/answers';
import { type Next, nextInSteps } from './ask-next';
import type { Bank } from './effect-of-answers';
import type { Steps } from './steps';

/** How many are kept: what follows all likely answers to a few questions. */
const KEPT = 300;
/** How many that were laid down half way. */
const KEPT_BEGUN = 4;

/**
 * What to ask next, found once for the same answers, so that what was worked out ahead is there at once; what was laid down half
 * way is gone on with.
 */
export function foundNext(bank: Bank): (answers: Answers) => Steps<Next> {
  const found = new Map<string, Next>();
  const begun = new Map<string, Steps<Next>>();
  return function* (answers) {
    const key = answersKey(answers);
    for (;;) {
      // Whoever looks for the same beside us may have come to the end.
      const known = found.get(key);
      if (known !== undefined) return known;
      const steps = begun.get(key) ?? nextInSteps(answers, bank);
      begun.delete(key);
      const step = steps.next();
      if (step.done === true) {
        keep(found, key, step.value, KEPT);
        return step.value;
      }
      keep(begun, key, steps, KEPT_BEGUN);
      yield;
    }
  };
}

/** The same for the same answers, in whatever order they were given. */
export const answersKey = (answers: Answers): string =>
  JSON.stringify(Object.entries(answers).sort(([a], [b]) => (a < b ? -1 : 1)));

function keep<T>(all: Map<string, T>, key: string, value: T, most: number): void {
  if (all.size >= most) all.delete(all.keys().next().value!);
  all.set(key, value);
}
