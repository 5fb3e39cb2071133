import { parentPort, workerData } from 'node:worker_threads';
import type { Found } from '../faces/door';
import { draftSafely, nextSafely } from '../faces/draft-safely';
import type { Answers } from '../interview/answers';
import { draftAll } from './draft-all';

/** What the thread is asked. */
export interface Ask {
  readonly id: number;
  readonly answers: Answers;
  readonly wantsNext: boolean;
}

/** What it answers: the same number, and a part of what was found. */
export interface Answered extends Found {
  readonly id: number;
}

// A thread of the program's own: it weighs and looks for the next question while the keys go on.
const { tariff, asOf } = workerData;
const all = draftAll(tariff, asOf);
const later = { ...all, save: () => null };
const port = parentPort!;
let newest = 0;
port.on('message', ({ id, answers, wantsNext }: Ask) => {
  newest = id;
  const say = (found: Found) => port.postMessage({ id, ...found } satisfies Answered);
  say({ draft: draftSafely(later, answers) });
  if (!wantsNext) return;
  const next = nextSafely(later, answers);
  say({ next });
  if (next?.code === 'ask') readAhead(id, all.likelyAfter(answers, next.questionId));
});

/** While the question is read, what would follow its likeliest answers is worked out: it is remembered, and nothing else. */
function readAhead(id: number, [first, ...rest]: readonly Answers[]): void {
  if (first === undefined) return;
  // What is asked meanwhile is heard between any two.
  setImmediate(() =>
    setImmediate(() => {
      if (id !== newest) return;
      nextSafely(later, first);
      readAhead(id, rest);
    }),
  );
}
