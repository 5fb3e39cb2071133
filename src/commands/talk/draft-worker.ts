import { parentPort, workerData } from 'node:worker_threads';
import type { Found } from '../../faces/door';
import { draftSafely } from '../../faces/draft-safely';
import type { Answers } from '../../interview/answers';
import type { NextStep } from '../../interview/next-step';
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
  look(id, answers, (next) => {
    say({ next });
    if (next?.code === 'ask') readAhead(id, all.likelyAfter(answers, next.questionId));
  });
});

/** Its sums and words are loaded when it is asked first. */
async function answerWhatIf({ id, answers, tried }: WhatIfAsk): Promise<void> {
  whatIf ??= import('./what-if-all').then((loaded) => loaded.whatIfAll(tariff, asOf));
  const of = await whatIf;
  port.postMessage({ id, whatIf: of(answers, tried) } satisfies WhatIfAnswered);
}

/** While the question is read, what would follow each likely answer is worked out: it is remembered, and nothing else. */
function readAhead(id: number, [first, ...rest]: readonly Answers[]): void {
  if (first !== undefined) look(id, first, () => readAhead(id, rest));
}

/** So long nobody is heard, ms. */
const SLICE_MS = 20;

/** What comes next, found in slices: what is asked meanwhile is heard between any two, and ends the looking. Null where it cannot be found. */
function look(id: number, answers: Answers, found: (next: NextStep | null) => void): void {
  const steps = all.nextInSteps(answers);
  const slice = () => {
    if (id !== newest) return;
    const end = performance.now() + SLICE_MS;
    let next: NextStep | null = null;
    try {
      for (;;) {
        const step = steps.next();
        if (step.done === true) {
          next = step.value;
          break;
        }
        if (performance.now() > end) {
          // Twice: what came meanwhile is taken between.
          setImmediate(() => setImmediate(slice));
          return;
        }
      }
    } catch {
      next = null;
    }
    found(next);
  };
  slice();
}
