import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import { createInterface } from 'node:readline/promises';
import { HOME_KEY } from '../store/home-file';
import { isHomeFile, namedAlike, removeFiles, tracesOf } from '../store/home-traces';
import { saySystemError } from '../store/say-system-error';
import { lockHome } from '../store/sitting-lock';
import { DONE, FAILED, WRONG_USAGE } from './exit-codes';
import { printErr } from './print';
import type { Arguments } from './read-arguments';

/** `lampkeeper forget HOME`: its file, its papers and everything begun for it, once it was said to be so. */
export async function forgetCommand(args: Arguments): Promise<number> {
  const [path, ...more] = args.rest;
  if (path === undefined || more.length > 0) {
    printErr('forget takes one home: lampkeeper forget kim\n');
    return WRONG_USAGE;
  }
  if (!existsSync(path)) {
    printErr(`There is no ${path} here. Nothing was removed.\n`);
    return FAILED;
  }
  const isHome = attempt('read', path, () => isHomeFile(path));
  if (isHome === null) return FAILED;
  if (!isHome) {
    printErr(
      `${path} is no home file: it has no line "${HOME_KEY}: 1". Take it away by hand if you mean it. Nothing was removed.\n`,
    );
    return FAILED;
  }
  const folders = args.out === null ? [] : [args.out];
  const traces = tracesOf(path, folders);
  const list = traces.map((one) => `  ${one}\n`).join('');
  if (args.dryRun) {
    printErr(`Would remove:\n${list}${sayOthers(path, traces)}`);
    return DONE;
  }
  const lock = attempt('write', path, () => lockHome(path));
  if (lock === null) return FAILED;
  if (!lock.ok) {
    printErr(
      `This home is open in another window (process ${lock.pid}). Close it first. Nothing was removed.\n`,
    );
    return FAILED;
  }
  try {
    if (!args.yes) {
      printErr(`This removes for good:\n${list}${sayOthers(path, traces)}`);
      const said = await answered();
      if (said !== true) {
        printErr(said === null ? NOBODY : 'Nothing was removed.\n');
        return said === null ? WRONG_USAGE : FAILED;
      }
    }
    const failed = removeFiles(traces);
    if (failed !== null) {
      printErr(
        `${saySystemError(failed.error, 'write', resolve(failed.path))} It is still there.\n`,
      );
      return FAILED;
    }
    printErr(`Removed:\n${list}`);
    return DONE;
  } finally {
    lock.release();
  }
}

/** Before anything is taken away; null where the disk does not let us, which is said. */
function attempt<T>(doing: 'read' | 'write', path: string, what: () => T): T | null {
  try {
    return what();
  } catch (error) {
    printErr(`${saySystemError(error, doing, resolve(path))} Nothing was removed.\n`);
    return null;
  }
}

const NOBODY = 'There is nobody here to ask. Add --yes to remove them. Nothing was removed.\n';

function sayOthers(path: string, traces: readonly string[]): string {
  const others = namedAlike(path, traces);
  return others.length === 0 ? '' : `Not ours, and left alone: ${others.join(', ')}\n`;
}

/** True where "yes" was typed, false for anything else, null where there is no terminal to ask at. */
async function answered(): Promise<boolean | null> {
  if (!process.stdin.isTTY) return null;
  const asks = createInterface({ input: process.stdin, output: process.stderr });
  try {
    const typed = await asks.question('Type yes to remove them: ');
    return typed.trim().toLowerCase() === 'yes';
  } finally {
    asks.close();
  }
}
