import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import interview from '#compiled/questions.js';
import { withoutPrivate } from '../interview/private-answers';
import { homeFileName, nameOfFile } from '../store/home-file';
import { STANDARD_INPUT } from '../store/read-text';
import { writeCopy } from '../store/write-copy';
import { homeText } from '../store/write-home';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { homeFromFile } from './home-from-file';
import { printErr } from './print';

/**
 * Write a copy of a home file without its private answers: no comments, no keys that are not ours, nothing begun, no
 * tariff. A file that is there is never replaced.
 */
export async function privateCopy(path: string, dryRun: boolean): Promise<number> {
  if (path === STANDARD_INPUT) {
    printErr('--private writes beside a file, and standard input is none.\n');
    return WRONG_USAGE;
  }
  const home = await homeFromFile(path, null);
  if (!home.ok) {
    printErr(`${home.says}\n`);
    return FAILED;
  }
  const answers = withoutPrivate(interview, home.answers);
  const copy = join(dirname(path), homeFileName(`${nameOfFile(path)}-to-share`));
  const left = Object.keys(home.answers).length - Object.keys(answers).length;
  if (dryRun) {
    const there = existsSync(copy);
    printErr(
      there
        ? `${copy} is there already, and would not be replaced.\n`
        : `Would write ${copy}, without ${left} private answers.\n`,
    );
    return there ? FAILED : DONE;
  }
  const problem = writeCopy(copy, homeText(interview, { answers, asOf: home.asOf }));
  if (problem !== null) {
    printErr(`${problem}\n`);
    return FAILED;
  }
  printErr(
    `Wrote ${copy}, without ${left} private answers. A plan made from it counts them as not told, so it is another plan: never follow it where someone's life hangs on power.\n`,
  );
  return DONE;
}
