import { type Disk, realDisk } from '../../src/store/disk';

/** A step of saving that can fail. */
export type Step = 'open' | 'read' | 'write' | 'fsync' | 'close' | 'rename' | 'unlink';

/** What fails after the step of a number has: nothing, every removal, or all, as after a kill. */
export type Then = 'goes on' | 'removes nothing' | 'dead';

/** In place of a code: the write takes nothing and says so. */
export const TAKES_NOTHING = 'takes nothing';

/**
 * The real disk, but the step of this number fails with this code.
 * @param most bytes that one write takes, so that every write is short
 */
export function faultyDisk(at: number, code: string, then: Then = 'goes on', most = 100) {
  let count = 0;
  const steps: Step[] = [];
  let armed = false;
  const failing = (step: Step): void => {
    if (!armed) return;
    steps.push(step);
    count += 1;
    const after =
      count > at && (then === 'dead' || (then === 'removes nothing' && step === 'unlink'));
    if (count === at || after) throw Object.assign(new Error(code), { code });
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
    write: (file, bytes, from) => {
      if (code === TAKES_NOTHING && armed && count + 1 === at) {
        steps.push('write');
        count += 1;
        return 0;
      }
      failing('write');
      return realDisk.write(file, bytes.subarray(0, from + most), from);
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
  /** The disk is sound again. */
  const disarm = () => {
    armed = false;
  };
  return { disk, steps, arm, disarm };
}
