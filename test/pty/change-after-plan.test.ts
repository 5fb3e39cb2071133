import { copyFileSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { PROGRAM } from '../fixtures/program';
import { openTerminal } from './open-terminal';

const household = fileURLToPath(new URL('../households/tower-six.home.yaml', import.meta.url));

it('leads from the plan over what if to the question, to both plans, and back to the same plan', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-change-'));
  const file = join(folder, 'oak.home.yaml');
  copyFileSync(household, file);
  const told = readFileSync(file, 'utf8');
  const goal = /goal-hours: .*/.exec(told)![0];
  const terminal = openTerminal(
    [PROGRAM, 'oak', '--change'],
    { columns: 80, rows: 44 },
    { folder },
  );
  await terminal.shows('Is anything dangerous');
  terminal.press('9 \r');
  await terminal.shows('Check your answers');
  terminal.press('\x1b[B\r');
  await terminal.shows('Front page: plan for oak');
  terminal.press('w');
  await terminal.shows('What to get:');
  terminal.press('\x1b[C');
  await terminal.shows('(now 48 h)');
  terminal.press('\r');
  await terminal.shows('You tried: 3 days.');
  terminal.press('\x1572\r');
  await terminal.shows('What this changes in the plan');
  await terminal.shows('You want 3');
  terminal.press('\x1b[B\x1b[B');
  await terminal.shows('> Drop it');
  terminal.press('\r');
  await terminal.shows('Front page: plan for oak');
  terminal.press('\x03');
  await terminal.ended();
  expect(readFileSync(file, 'utf8')).toContain(goal);
  // Nothing was made anew, so nothing changed since.
  await terminal.shows('Your papers:');
  expect(terminal.text()).not.toContain('Since the plan of');
}, 60_000);
