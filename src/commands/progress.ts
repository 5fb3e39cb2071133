import { Worker } from 'node:worker_threads';

/** What a plan is waited for with. */
export const PLANNING = 'Working out the plan ...';

/** Nobody wonders before this, ms. */
const AFTER_MS = 300;

/**
 * Runs in a thread of its own, because the sums leave the main one no moment: waits, and says on standard error what
 * goes on unless the sums were quicker.
 */
const WATCH = `
const { workerData: { done, says, afterMs } } = require('node:worker_threads');
const flag = new Int32Array(done);
if (Atomics.wait(flag, 0, 0, afterMs) === 'timed-out' && Atomics.compareExchange(flag, 0, 0, 2) === 0)
  require('node:fs').writeSync(2, says);
`;

/** Do something that may take a while; after a third of a second a terminal is told so, and the words go again. */
export function withProgress<T>(says: string, work: () => T): T {
  const { isTTY } = process.stderr;
  if (isTTY !== true) return work();
  const plain = process.env.TERM === 'dumb';
  const done = new SharedArrayBuffer(4);
  const flag = new Int32Array(done);
  const worker = new Worker(WATCH, {
    eval: true,
    workerData: { done, says: plain ? `${says}\n` : says, afterMs: AFTER_MS },
  });
  worker.unref();
  // Without the words the work goes on all the same.
  worker.on('error', () => {});
  try {
    return work();
  } finally {
    const shown = Atomics.compareExchange(flag, 0, 0, 1) === 2;
    Atomics.notify(flag, 0);
    if (shown && !plain) process.stderr.write('\r\x1b[K');
  }
}
