import type { Answers } from '../../src/interview/answers';
import { held } from './never';
import { note, type Tally } from './part';
import { type Held, type Seen, seenOf } from './seen';

/** The whole plan of a home, held to everything that must be so in every plan and on every sheet, or to some of it. */
export function tryPlan(
  name: string,
  answers: Answers,
  tally: Tally,
  some: Readonly<Record<string, Held>> = held,
): Seen {
  const seen = seenOf(answers);
  for (const [what, holds] of Object.entries(some)) {
    const wrong = holds(seen);
    if (wrong !== null) note(tally, name, what, wrong);
  }
  return seen;
}
