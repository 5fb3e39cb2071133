import { Worker } from 'node:worker_threads';
import type { Tariff } from '../../bill/tariff/tariff';
import type { WhatIfApart } from '../../faces/door';
import type { WhatIfAnswered, WhatIfAsk } from './draft-worker';

type Asked = Omit<WhatIfAsk, 'id'> & { readonly found: Parameters<WhatIfApart['look']>[2] };

/**
 * What if in the thread beside the keys, started at the first look. While one is worked out only the newest of what is asked
 * meanwhile waits: a key held down does not pile up work.
 */
export function whatIfApart(tariff: Tariff | null, asOf: string): WhatIfApart {
  let worker: Worker | null = null;
  let id = 0;
  let busy: Asked | null = null;
  let waiting: Asked | null = null;
  const onward = (): void => {
    busy = waiting;
    waiting = null;
    if (busy === null) return;
    id += 1;
    worker ??= start();
    const { answers, tried } = busy;
    worker.postMessage({ id, answers, tried } satisfies WhatIfAsk);
  };
  const start = (): Worker => {
    const made = new Worker(new URL('./draft-worker.mjs', import.meta.url), {
      workerData: { tariff, asOf },
    });
    made.on('message', ({ id: of, whatIf }: WhatIfAnswered) => {
      if (of !== id || busy === null) return;
      const { found } = busy;
      onward();
      found(whatIf);
    });
    made.on('error', () => {
      worker = null;
      const failed = waiting ?? busy;
      busy = null;
      waiting = null;
      failed?.found('failed');
    });
    made.unref();
    return made;
  };
  return {
    look(answers, tried, found) {
      waiting = { answers, tried, found };
      if (busy === null) onward();
    },
    close() {
      id += 1;
      waiting = null;
      busy = null;
      void worker?.terminate();
      worker = null;
    },
  };
}
