import { type Disk, realDisk } from '../../src/store/disk';

/** A step of saving that can fail. */
export type Step = 'open' | 'read' | 'write' | 'fsync' | 'close' | 'rename' | 'unlink';

/** What fails after the step of a number has: nothing, every removal, or all, as after a kill. */
export type Then = 'goes on' | 'removes nothing' | 'dead';

/** The real disk, but the step of this number fails with this code. */
export function faultyDisk(at: number, code: string, then: Then = 'goes on') {
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
  /** The disk is sound again. */
  const disarm = () => {
    armed = false;
  };
  return { disk, steps, arm, disarm };
}
