import { existsSync } from 'node:fs';
import { tmpdir } from 'node:os';

/** A place for files whose disk is not what is tried: in memory where the system has one, so that no fsync takes its time. */
export const IN_MEMORY = existsSync('/dev/shm') ? '/dev/shm' : tmpdir();
