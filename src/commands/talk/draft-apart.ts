import { Worker } from 'node:worker_threads';
import type { Tariff } from '../../bill/tariff/tariff';
import type { Apart, Found } from '../../faces/door';
import { SUMS_FAILED } from '../../faces/draft-safely';
import type { Answered, Ask, LeanAsk } from './draft-worker';

/** The thread beside the keys. It is started at the first look, and ends with the program. */
export function draftApart(tariff: Tariff | null, asOf: string): Apart {
  let worker: Worker | null = null;
  let newest = 0;
  let found: (found: Found) => void = () => {};
  const start = (): Worker => {
    const made = new Worker(new URL('./draft-worker.mjs', import.meta.url), {
      workerData: { tariff, asOf },
    });
    made.on('message', ({ id, ...rest }: Answered) => {
      if (id === newest) found(rest);
    });
    // The sitting goes on without sums, and with questions in their written order.
    made.on('error', () => {
      worker = null;
      found({ draft: SUMS_FAILED, next: null });
    });
    made.unref();
    return made;
  };
  return {
    look(answers, wantsNext, tell) {
      newest += 1;
      found = tell;
      worker ??= start();
      worker.postMessage({ id: newest, answers, wantsNext } satisfies Ask);
    },
    lean(answers) {
      worker?.postMessage({ leaning: answers } satisfies LeanAsk);
    },
    close() {
      newest += 1;
      void worker?.terminate();
      worker = null;
    },
  };
}
