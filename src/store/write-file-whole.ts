import { dirname } from 'node:path';
import { codeOf, type Disk, realDisk, refusal } from './disk';
import { targetOf } from './target-of';

/** A file to write: where, and its text. */
export interface NewText {
  readonly path: string;
  readonly text: string;
}

/**
 * Write a file whole or not at all, and have it on the disk before this returns: into a new file beside it, readable
 * by its owner only, then renamed over. A link is followed and what it leads to is replaced. Throws what the system
 * throws, the old file untouched.
 */
export function writeFileWhole(path: string, text: string, disk: Disk = realDisk): void {
  writeFilesWhole([{ path, text }], disk);
}

/** The same for files that belong together: none takes its place before all are on the disk. */
export function writeFilesWhole(files: readonly NewText[], disk: Disk = realDisk): void {
  const targets = files.map(({ path }) => targetOf(path, disk));
  try {
    files.forEach(({ text }, i) => {
      writeNew(temporaryOf(targets[i]!), Buffer.from(text, 'utf8'), disk);
    });
    for (const target of targets) renameOver(temporaryOf(target), target, disk);
  } catch (error) {
    for (const target of targets) quietly(() => disk.unlink(temporaryOf(target)));
    throw error;
  }
  for (const folder of new Set(targets.map(dirname))) syncFolder(folder, disk);
}

/** The file beside a file in which it is written. */
export function temporaryOf(target: string): string {
  return `${target}.new-${process.pid}`;
}

/** A new file that nobody prepared for us: neither a file nor a link of that name is ever written through. */
export function writeNew(
  path: string,
  bytes: Uint8Array,
  disk: Disk,
  there: 'remove' | 'keep' = 'remove',
): void {
  const file = openNew(path, disk, there);
  try {
    let written = 0;
    while (written < bytes.length) {
      const more = disk.write(file, bytes, written);
      if (more <= 0) throw refusal('ENOSPC');
      written += more;
    }
    disk.fsync(file);
  } finally {
    disk.close(file);
  }
}

function openNew(path: string, disk: Disk, there: 'remove' | 'keep'): number {
  try {
    return disk.open(path, 'new', 0o600);
  } catch (error) {
    // Left by a program of our number that was killed, or laid there: taken away, never written through.
    if (there === 'keep' || codeOf(error) !== 'EEXIST') throw error;
    disk.unlink(path);
    return disk.open(path, 'new', 0o600);
  }
}

const HELD = ['EPERM', 'EACCES', 'EBUSY'];
const WAITS_MS = [20, 40, 80, 160, 320];

/** On Windows a file that an editor or a sync client holds cannot be replaced for a moment: tried again. */
export function renameOver(from: string, to: string, disk: Disk): void {
  const waits = disk.platform === 'win32' ? WAITS_MS : [];
  for (const ms of waits) {
    try {
      disk.rename(from, to);
      return;
    } catch (error) {
      if (!HELD.includes(codeOf(error))) throw error;
      disk.wait(ms);
    }
  }
  disk.rename(from, to);
}

/** The new name too must outlast a power cut. Windows has no such call for folders. */
export function syncFolder(folder: string, disk: Disk): void {
  if (disk.platform === 'win32') return;
  const file = disk.open(folder, 'folder');
  try {
    disk.fsync(file);
  } catch (error) {
    // Some network file systems have none either.
    if (!['EINVAL', 'ENOTSUP'].includes(codeOf(error))) throw error;
  } finally {
    disk.close(file);
  }
}

function quietly(what: () => void): void {
  try {
    what();
  } catch {
    // It was never made, or is gone already.
  }
}
