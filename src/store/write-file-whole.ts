import { closeSync, fsyncSync, openSync, renameSync, unlinkSync, writeSync } from 'node:fs';

/**
 * Write a file whole or not at all: into a new file beside it, then renamed over. Throws what the system throws,
 * the old file untouched.
 */
export function writeFileWhole(path: string, text: string, mode = 0o600): void {
  const beside = `${path}.new-${process.pid}`;
  try {
    const file = openSync(beside, 'w', mode);
    try {
      const bytes = Buffer.from(text, 'utf8');
      let written = 0;
      while (written < bytes.length) written += writeSync(file, bytes, written);
      fsyncSync(file);
    } finally {
      closeSync(file);
    }
    renameSync(beside, path);
  } catch (error) {
    try {
      unlinkSync(beside);
    } catch {
      // It was never made, or is gone already.
    }
    throw error;
  }
}
