import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { expect, test } from 'vitest';
import { PROGRAM } from '../fixtures/program';

// Linux has a device that is always full.
test.skipIf(!existsSync('/dev/full'))(
  'output that cannot be written is said, and the end is a failure',
  () => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(process.execPath, [PROGRAM, '--help'], {
      stdio: ['ignore', full, 'pipe'],
      encoding: 'utf8',
    });
    closeSync(full);
    expect(stderr).toMatch(/Could not write all of the output: the disk is full/);
    expect(status).toBe(1);
  },
);
