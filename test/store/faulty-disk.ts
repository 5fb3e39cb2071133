import { type Disk, realDisk } from '../../src/store/disk';

/** A step of saving that can fail. */
export type Step = 'open' | 'read' | 'write' | 'fsync' | 'close' | 'rename' | 'unlink';

/** The real disk, but the step of this number fails with this code; `dead` makes all after it fail too, as a kill would. */
export function faultyDisk(at: number, code: string, dead = false) {
  let count = 0;
  const steps: Step[] = [];
  let armed = false;
  const failing = (step: Step): void => {
    if (!armed) return;
    steps.push(step);
    count += 1;
    if (count === at || (dead && count > at)) throw Object.assign(new Error(code), { code });
  };
  const disk: Disk = {
    ...realDisk,
    open: (path, how, mode) => {
      failing('open');
      return realDisk.open(path, how, mode);
    },
    read: (file, into, from) => {
      failing('read');
      return realDisk.read(file, into, from);
    },
    // Short writes: never more than a hundred bytes at once.
    write: (file, bytes, from) => {
      failing('write');
      return realDisk.write(file, bytes.subarray(0, from + 100), from);
    },
    fsync: (file) => {
      failing('fsync');
      realDisk.fsync(file);
    },
    close: (file) => {
      realDisk.close(file);
      failing('close');
    },
    rename: (from, to) => {
      failing('rename');
      realDisk.rename(from, to);
    },
    unlink: (path) => {
      failing('unlink');
      realDisk.unlink(path);
    },
  };
  /** Faults begin here: before it the home was opened and read. */
  const arm = () => {
    armed = true;
  };
  return { disk, steps, arm };
}
