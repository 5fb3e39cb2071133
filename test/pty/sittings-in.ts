import { readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, expect } from 'vitest';
import { type OpenTerminal, openTerminal, type Size } from './open-terminal';
import { AGAIN } from './sitting-after-sitting';
import { WINDOW } from './terminals-of';

/** A sitting at a program that goes on after it. */
export interface Sitting extends Omit<OpenTerminal, 'ended' | 'kill' | 'forget' | 'pid'> {
  /** Wait until this sitting has ended; gives how. */
  ended(): Promise<string>;
}

/** What a small program writes when a sitting has ended. */
const ENDED = /Ended: (.+)\r/;

/**
 * Sittings, one a test, at a program that is started once a file: a start takes longer than most tests. Each begins
 * in the size asked for, with nothing on the screen and nothing in the folder. A test that leaves its sitting open
 * has it ended by Ctrl+C; after one that failed the next starts another program. At the end of the file the program
 * is told to end, and has to do so by itself, with nothing left open by any sitting.
 */
export function sittingsIn(program: () => string, first: string) {
  let running: OpenTerminal | null = null;
  const howEnded = (terminal: OpenTerminal) =>
    terminal.until('the end of the sitting', () => ENDED.exec(terminal.raw())?.[1] ?? null);
  const takeAway = async (terminal: OpenTerminal) => {
    running = null;
    terminal.kill('SIGKILL');
    await terminal.ended();
    rmSync(terminal.folder, { recursive: true, force: true });
  };
  const standUp = async (terminal: OpenTerminal) => {
    if (!ENDED.test(terminal.raw())) terminal.press('\x03');
    await howEnded(terminal);
  };
  afterEach(async ({ task }) => {
    if (running === null) return;
    if (task.result?.state === 'fail') await takeAway(running);
    else await standUp(running);
  });
  afterAll(async () => {
    if (running === null) return;
    running.press('end\r');
    try {
      expect((await running.ended()).signal).toBeFalsy();
    } finally {
      await takeAway(running);
    }
  });
  return async ({ size = WINDOW }: { readonly size?: Size } = {}): Promise<Sitting> => {
    if (running === null) {
      running = openTerminal([program(), AGAIN], size);
    } else {
      await standUp(running);
      for (const name of readdirSync(running.folder))
        rmSync(join(running.folder, name), { recursive: true });
      running.forget();
      running.resize(size);
      running.press('\r');
    }
    const terminal = running;
    await terminal.shows(first);
    return { ...terminal, ended: () => howEnded(terminal) };
  };
}
