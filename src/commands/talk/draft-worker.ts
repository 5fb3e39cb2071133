import { parentPort, workerData } from 'node:worker_threads';
import type { Found } from '../../faces/door';
import { draftSafely } from '../../faces/draft-safely';
import type { Answers } from '../../interview/answers';
import type { NextStep } from '../../interview/next-step';
import type { Tried } from '../../interview/what-if/tried';
import { aheadBy } from './ahead';
import { draftAll } from './draft-all';
import type { WhatIfAll } from './what-if-all';

/** What the thread is asked. */
export interface Ask {
  readonly id: number;
  readonly answers: Answers;
  readonly wantsNext: boolean;
}

/** What the answers would be if the question were entered as it stands. */
export interface LeanAsk {
  readonly leaning: Answers;
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
const ahead = aheadBy(all);
/** Steps ahead are being taken. */
let readsAhead = false;
port.on('message', (ask: Ask | LeanAsk | WhatIfAsk) => {
  if ('tried' in ask) {
    void answerWhatIf(ask);
    return;
  }
  if ('leaning' in ask) {
    ahead.lean(ask.leaning);
    readAhead();
    return;
  }
  const { id, answers, wantsNext } = ask;
  newest = id;
  ahead.begin([]);
  const say = (found: Found) => port.postMessage({ id, ...found } satisfies Answered);
  say({ draft: draftSafely(later, answers) });
  if (!wantsNext) return;
  look(id, answers, (next) => {
    say({ next });
    if (next?.code !== 'ask') return;
    ahead.begin(all.likelyAfter(answers, next.questionId));
    readAhead();
  });
});

/** Its sums and words are loaded when it is asked first. */
async function answerWhatIf({ id, answers, tried }: WhatIfAsk): Promise<void> {
  whatIf ??= import('./what-if-all').then((loaded) => loaded.whatIfAll(tariff, asOf));
  const of = await whatIf;
  port.postMessage({ id, whatIf: of(answers, tried) } satisfies WhatIfAnswered);
}

/** While the question is read, what would follow the answers it could get is worked out. */
function readAhead(): void {
  if (readsAhead) return;
  readsAhead = true;
  inSlices(ahead.step, () => {
    readsAhead = false;
  });
}

/** What comes next; null where it cannot be found. Newer answers end the looking. */
function look(id: number, answers: Answers, found: (next: NextStep | null) => void): void {
  const steps = all.nextInSteps(answers);
  let next: NextStep | null = null;
  const step = () => {
    if (id !== newest) return false;
    try {
      const { done, value } = steps.next();
      if (done === true) next = value;
      return done !== true;
    } catch {
      return false;
    }
  };
  inSlices(step, () => {
    if (id === newest) found(next);
  });
}

/** So long nobody is heard, ms. */
const SLICE_MS = 20;

/** Steps as long as there are any, in slices: what is asked meanwhile is heard between any two. */
function inSlices(step: () => boolean, ended: () => void): void {
  const slice = () => {
    const end = performance.now() + SLICE_MS;
    while (step()) {
      if (performance.now() <= end) continue;
      // Twice: what came meanwhile is taken between.
      setImmediate(() => setImmediate(slice));
      return;
    }
    ended();
  };
  slice();
}
