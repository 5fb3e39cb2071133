import interview from '#compiled/questions.js';
import { sayFault } from '../store/home-file';
import { readHome } from '../store/read-home';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import type { Arguments } from './read-arguments';

/** `lampkeeper check FILE`: line, column and what to do for every fault. */
export function checkCommand(args: Arguments): number {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    process.stderr.write('check takes one home file: lampkeeper check kim.home.yaml\n');
    return WRONG_USAGE;
  }
  const read = readHome(path, interview);
  if (!read.ok) {
    process.stdout.write(`${read.faults.map((f) => sayFault(path, f)).join('\n')}\n`);
    return FAILED;
  }
  process.stdout.write(`${path}: ${Object.keys(read.answers).length} answers, nothing wrong.\n`);
  return DONE;
}
