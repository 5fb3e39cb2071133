import { DONE, FAILED } from './commands/exit-codes';
import { printErr } from './commands/print';
import { runLine } from './commands/run-line';

// A reader that goes away (a pager closed early) is no failure of ours; a full disk behind ">" is said.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(DONE);
  const why = error.code === 'ENOSPC' ? 'the disk is full' : error.message;
  printErr(`Could not write all of the output: ${why}. What was written is cut off.\n`);
  process.exit(FAILED);
});
process.stderr.on('error', () => {});

runLine(process.argv.slice(2)).then((code) => {
  process.exitCode = code;
});
