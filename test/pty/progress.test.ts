import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { PROGRAM } from '../fixtures/program';
import { lightsOnly } from '../fixtures/quick-homes';
import { bundleSmall } from './bundle-small';
import { openTerminal } from './open-terminal';

let folder = '';
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
});
afterEach(() => rmSync(folder, { recursive: true }));

/** All that a program writes to a terminal, from its start to its end. */
async function writes(command: readonly string[]): Promise<string> {
  const terminal = openTerminal(command, { columns: 80, rows: 24 }, { folder });
  expect((await terminal.ended()).exitCode).toBe(0);
  return terminal.raw();
}

const AND_AWAY = 'Working out the plan ...\r\x1b[K';

it('says on a terminal what is waited for, and takes the words away', async () => {
  const raw = await writes([await bundleSmall('slow-sums-program.ts')]);
  expect(raw.indexOf(AND_AWAY)).toBeGreaterThanOrEqual(0);
  expect(raw.indexOf('Working out')).toBeLessThan(raw.indexOf('# Backup power plan'));
});

it('leaves no such words before a plan, however quick the machine', async () => {
  writeFileSync(join(folder, 'kim.home.yaml'), lightsOnly('kim'));
  const raw = await writes([PROGRAM, 'plan', 'kim']);
  expect(raw).toContain('# Backup power plan');
  expect(raw.replace(AND_AWAY, '')).not.toContain('Working out');
});
