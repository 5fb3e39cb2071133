import { rmSync } from 'node:fs';
import { afterEach } from 'vitest';
import { type OpenTerminal, openTerminal, type Size } from './open-terminal';

/** Where a program is started: a folder begun before, and what differs in its environment. */
export interface Beside {
  readonly folder?: string;
  readonly env?: object;
}

export interface Start extends Beside {
  readonly args?: readonly string[];
  readonly size?: Size;
  /** As a job of an interactive shell, so that it can be stopped and brought back. */
  readonly shell?: boolean;
}

export const WINDOW: Size = { columns: 80, rows: 24 };

/**
 * The one way these tests open a terminal: start the program, pass the welcome and wait for the first question.
 * After each test every program is ended and every folder made for it is taken away.
 */
export function terminalsOf(program: () => string, first: string, welcome = 'Lampkeeper: a plan') {
  const opened: OpenTerminal[] = [];
  afterEach(async () => {
    const all = opened.splice(0);
    for (const terminal of all) terminal.kill('SIGKILL');
    for (const terminal of all) await terminal.ended();
    for (const { folder } of all) rmSync(folder, { recursive: true, force: true });
  });
  return async (of: Start = {}): Promise<OpenTerminal> => {
    const { args = [], size = WINDOW, shell = false, ...beside } = of;
    const command = [program(), ...args];
    const terminal = shell
      ? openTerminal(['--norc', '--noprofile', '-i'], size, { ...beside, file: 'bash' })
      : openTerminal(command, size, beside);
    opened.push(terminal);
    if (shell) terminal.press(`'${[process.execPath, ...command].join("' '")}'\r`);
    await terminal.until(`"${first}" or a welcome`, () => {
      return [first, welcome].some((text) => terminal.text().includes(text));
    });
    if (!terminal.text().includes(first)) terminal.press('\r');
    await terminal.shows(first);
    return terminal;
  };
}
