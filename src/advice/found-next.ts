import type { Answers } from '../interview/answers';
import { type Next, nextInSteps } from './ask-next';
import type { Bank } from './effect-of-answers';
import type { Steps } from './steps';

/** How many are kept: what follows all likely answers to a few questions. */
const KEPT = 100;

/** What to ask next, found once for the same answers, so that what was worked out ahead is there at once. */
export function foundNext(bank: Bank): (answers: Answers) => Steps<Next> {
  const found = new Map<string, Next>();
  return function* (answers) {
    const key = JSON.stringify(Object.entries(answers).sort(([a], [b]) => (a < b ? -1 : 1)));
    const known = found.get(key);
    if (known !== undefined) return known;
    const next = yield* nextInSteps(answers, bank);
    if (found.size >= KEPT) found.delete(found.keys().next().value!);
    found.set(key, next);
    return next;
  };
}
