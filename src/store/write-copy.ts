import { codeOf, realDisk } from './disk';
import { saySystemError } from './say-system-error';
import { writeNew } from './write-file-whole';

/** Write a file that must not be there yet. A sentence that says what to do when that failed, else null. */
export function writeCopy(path: string, text: string): string | null {
  try {
    writeNew(path, Buffer.from(text, 'utf8'), realDisk, 'keep');
    return null;
  } catch (error) {
    // Half a copy is of no use to anybody.
    if (codeOf(error) !== 'EEXIST') removeQuietly(path);
    return saySystemError(error, 'write', path);
  }
}

function removeQuietly(path: string): void {
  try {
    realDisk.unlink(path);
  } catch {
    // It was never made.
  }
}
