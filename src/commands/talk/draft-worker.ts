import { parentPort, workerData } from 'node:worker_threads';
import type { Found } from '../../faces/door';
import { draftSafely, nextSafely } from '../../faces/draft-safely';
import type { Answers } from '../../interview/answers';
import type { Tried } from '../../interview/what-if/tried';
import { draftAll } from './draft-all';
import type { WhatIfAll } from './what-if-all';

/** What the thread is asked. */
export interface Ask {
  readonly id: number;
  readonly answers: Answers;
  readonly wantsNext: boolean;
}

/** What if is asked in the same thread. */
export interface WhatIfAsk {
  readonly id: number;
  readonly answers: Answers;
  readonly tried: Tried;
}

export interface WhatIfAnswered {
  readonly id: number;
  readonly whatIf: ReturnType<WhatIfAll>;
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
let whatIf: Promise<WhatIfAll> | null = null;
port.on('message', (ask: Ask | WhatIfAsk) => {
  if ('tried' in ask) {
    void answerWhatIf(ask);
    return;
  }
  const { id, answers, wantsNext } = ask;
  newest = id;
  const say = (found: Found) => port.postMessage({ id, ...found } satisfies Answered);
  say({ draft: draftSafely(later, answers) });
  if (!wantsNext) return;
  const next = nextSafely(later, answers);
  say({ next });
  if (next?.code === 'ask') readAhead(id, all.likelyAfter(answers, next.questionId));
});

/** Its sums and words are loaded when it is asked first. */
async function answerWhatIf({ id, answers, tried }: WhatIfAsk): Promise<void> {
  whatIf ??= import('./what-if-all').then((loaded) => loaded.whatIfAll(tariff, asOf));
  const of = await whatIf;
  port.postMessage({ id, whatIf: of(answers, tried) } satisfies WhatIfAnswered);
}

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
