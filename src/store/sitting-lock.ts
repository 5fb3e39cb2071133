import { basename, dirname, join } from 'node:path';
import { codeOf, type Disk, realDisk } from './disk';
import { readText } from './read-text';
import { targetOf } from './target-of';
import { writeNew } from './write-file-whole';

/** The file that says that a home is open, beside it. */
export function lockOf(path: string, disk: Disk = realDisk): string {
  const target = targetOf(path, disk);
  return join(dirname(target), `.${basename(target)}.open`);
}

export type Lock =
  | { readonly ok: true; release(): void }
  /** Somebody sits at this home already: the process, and the file that says so. */
  | { readonly ok: false; readonly pid: number; readonly file: string };

/**
 * Sit down at a home, alone. A lock whose program no longer runs is taken away. Throws what the system throws where no
 * file can be made.
 */
export function lockHome(path: string, disk: Disk = realDisk): Lock {
  const file = lockOf(path, disk);
  for (let tries = 0; ; tries++) {
    try {
      writeLock(file, disk);
      return { ok: true, release: () => unlock(file, disk) };
    } catch (error) {
      if (codeOf(error) !== 'EEXIST' || tries >= 3) throw error;
      const pid = holderOf(file, disk);
      if (pid !== null && pid !== process.pid && disk.runs(pid)) return { ok: false, pid, file };
      // One that is just being written is empty for a moment.
      if (pid === null && tries === 0) disk.wait(50);
      else removeQuietly(file, disk);
    }
  }
}

function writeLock(file: string, disk: Disk): void {
  const open = disk.open(file, 'new', 0o600);
  let written = false;
  try {
    disk.write(open, Buffer.from(`${process.pid}\n`), 0);
    written = true;
  } finally {
    disk.close(open);
    // One without a number holds nobody off.
    if (!written) removeQuietly(file, disk);
  }
}

function holderOf(file: string, disk: Disk): number | null {
  try {
    const pid = Number(readText(file, disk).trim());
    return Number.isInteger(pid) && pid > 0 ? pid : null;
  } catch {
    return null;
  }
}

function unlock(file: string, disk: Disk): void {
  if (holderOf(file, disk) === process.pid) removeQuietly(file, disk);
}

/** Take away what killed programs left beside a home: files begun and never put in its place. */
export function cleanBeside(path: string, disk: Disk = realDisk): void {
  try {
    const target = targetOf(path, disk);
    const begun = `${basename(target)}.new-`;
    for (const name of disk.list(dirname(target))) {
      if (!name.startsWith(begun)) continue;
      const pid = Number(name.slice(begun.length));
      if (!Number.isInteger(pid) || pid <= 0 || disk.runs(pid)) continue;
      removeQuietly(join(dirname(target), name), disk);
    }
  } catch {
    // Nothing to clean where nothing can be read; saving says what is wrong.
  }
}

/** A sentence where nothing can be kept in this folder, else null. Tried by writing. */
export function folderProblem(folder: string, disk: Disk = realDisk): unknown {
  const probe = join(folder, `.lampkeeper-try-${process.pid}`);
  try {
    writeNew(probe, Buffer.alloc(4096), disk);
    disk.unlink(probe);
    return null;
  } catch (error) {
    removeQuietly(probe, disk);
    return error;
  }
}

function removeQuietly(file: string, disk: Disk): void {
  try {
    disk.unlink(file);
  } catch {
    // Another program was quicker, or may.
  }
}
