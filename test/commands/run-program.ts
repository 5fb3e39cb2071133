import { spawnSync } from 'node:child_process';
import { PROGRAM } from '../fixtures/program';
import type { Ran } from './run-here';

/** Run the built program as a shell would, in a folder, with something on standard input. */
export function runProgram(folder: string, words: readonly string[], input = ''): Ran {
  const { status, stdout, stderr } = spawnSync(process.execPath, [PROGRAM, ...words], {
    cwd: folder,
    env: { ...process.env, npm_lifecycle_event: '' },
    encoding: 'utf8',
    input,
    maxBuffer: 64e6,
  });
  // No code: a signal ended it, or it never began.
  return { code: status ?? -1, out: stdout, err: stderr };
}
