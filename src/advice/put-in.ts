import type { Answer, Answers } from '../interview/answers';
import { choicesIn } from '../interview/answers';
import { type ConditionCode, stopKindOf } from '../routes/stops/stop-codes';

/** The answers as they would be if these conditions held, and nothing else changed. */
export function putIn(answers: Answers, conditions: readonly ConditionCode[]): Answers {
  const changed: Record<string, Answer> = { ...answers };
  for (const code of conditions) {
    for (const [id, answer] of Object.entries(stopKindOf(code).opens?.by ?? {})) {
      changed[id] = added(changed[id], answer);
    }
  }
  return changed;
}

/** A yes is added to the others that were given; "none" takes their place, and they that of "none". */
function added(told: Answer | undefined, answer: Answer): Answer {
  const [before, more] = [choicesIn(told), choicesIn(answer)];
  if (before === null || more === null || more.includes(NONE)) return answer;
  return [...new Set([...before.filter((one) => one !== NONE), ...more])];
}

const NONE = 'none';
