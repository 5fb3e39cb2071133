import { PLANNING, withProgress } from '../../src/commands/progress';

// Sums that take their time whatever the machine, for a test through a pseudo-terminal.
const SLOW_MS = 900;
withProgress(PLANNING, () => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, SLOW_MS));
process.stdout.write('# Backup power plan\n');
