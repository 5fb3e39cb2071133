import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { PROGRAM } from '../fixtures/program';
import { lightsOnly } from '../fixtures/quick-homes';
import { openTerminal } from './open-terminal';

it('leads from the plan over what if to the question, to both plans, and back to the same plan', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-change-'));
  const file = join(folder, 'oak.home.yaml');
  writeFileSync(file, lightsOnly('oak', { 'goal-hours': '48 h' }));
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
  await terminal.shows('On a hard day');
  expect(terminal.text()).toMatch(/ 48 h\. +3 days\./);
  terminal.press('\x1b[B\x1b[B');
  await terminal.shows('> Drop it');
  terminal.press('\r');
  await terminal.shows('Front page: plan for oak');
  terminal.press('\x03');
  await terminal.ended();
  expect(readFileSync(file, 'utf8')).toContain('goal-hours: 48 h');
  // Nothing was made anew, so nothing changed since.
  await terminal.shows('Your papers:');
  expect(terminal.text()).not.toContain('Since the plan of');
}, 60_000);
