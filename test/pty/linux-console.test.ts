import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { PROGRAM } from '../fixtures/program';
import { openTerminal } from './open-terminal';

/** The console of Linux has no second page and marks no pastes (console_codes(4)); its function keys are its own. */
const CONSOLE = { env: { TERM: 'linux' }, without: ['?1049', '?2004'] };

it('on a console without a second page a sitting can be led, and its last words can be read', async () => {
  const terminal = openTerminal([PROGRAM], { columns: 80, rows: 25 }, CONSOLE);
  await terminal.shows('Lampkeeper: a plan');
  terminal.press('\r');
  await terminal.shows('Is anything dangerous');
  terminal.press('\x1b[[A\x1b[[E9 \r');
  await terminal.shows('What short name');
  // Typed, then Home and End as the console sends them.
  terminal.press('ak\x1b[1~o\x1b[4~\r');
  await terminal.hides('What short name');
  terminal.press('\x13');
  expect((await terminal.ended()).exitCode).toBe(0);
  await terminal.shows('To go on: lampkeeper oak.home.yaml');
  const lines = terminal.lines();
  // Nothing of the last question stands among the last words.
  const last = lines.findIndex((line) => line.includes('Your answers are in'));
  expect(lines.slice(last).join(' ')).not.toContain('Save and stop');
  expect(readFileSync(join(terminal.folder, 'oak.home.yaml'), 'utf8')).toContain('home-name: oak');
  rmSync(terminal.folder, { recursive: true });
});
