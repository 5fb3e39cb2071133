import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { PROGRAM } from '../fixtures/program';
import { lightsOnly } from '../fixtures/quick-homes';
import { openTerminal } from './open-terminal';

it('says on a terminal what is waited for, and takes the words away', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
  writeFileSync(join(folder, 'kim.home.yaml'), lightsOnly('kim'));
  const terminal = openTerminal([PROGRAM, 'plan', 'kim'], { columns: 80, rows: 24 }, { folder });
  expect((await terminal.ended()).exitCode).toBe(0);
  const raw = terminal.raw();
  expect(raw.indexOf('Working out the plan ...\r\x1b[K')).toBeGreaterThanOrEqual(0);
  rmSync(folder, { recursive: true });
  expect(raw.indexOf('Working out')).toBeLessThan(raw.indexOf('# Backup power plan'));
});
