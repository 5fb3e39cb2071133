import {
  closeSync,
  constants,
  fstatSync,
  fsyncSync,
  lstatSync,
  mkdirSync,
  openSync,
  readdirSync,
  readlinkSync,
  readSync,
  realpathSync,
  renameSync,
  unlinkSync,
  writeSync,
} from 'node:fs';

/** What a place in the file system is. */
export interface Entry {
  readonly kind: 'file' | 'folder' | 'link' | 'other';
  readonly bytes: number;
}

/** The one door to the disk. Everything the household keeps goes through it, so that every step of it can be made to fail. */
export interface Disk {
  readonly platform: NodeJS.Platform;
  open(path: string, how: 'read' | 'new' | 'folder', mode?: number): number;
  read(file: number, into: Uint8Array, at: number): number;
  write(file: number, bytes: Uint8Array, at: number): number;
  fsync(file: number): void;
  close(file: number): void;
  /** What an open file is. */
  stat(file: number): Entry;
  /** What stands at a path, links not followed. Throws ENOENT where nothing is. */
  look(path: string): Entry;
  /** Where a path leads once every link is followed. */
  follow(path: string): string;
  linkTarget(path: string): string;
  rename(from: string, to: string): void;
  unlink(path: string): void;
  mkdir(path: string): void;
  list(folder: string): string[];
  /** True while a process of this number runs here. */
  runs(pid: number): boolean;
  /** Wait, ms: a file held by an editor or a sync client is often free a moment later. */
  wait(ms: number): void;
}

// A pipe must not hold us up before we can see that it is one. Some systems lack these flags.
const READ = constants.O_RDONLY | (constants.O_NONBLOCK ?? 0);
const NEW = constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | (constants.O_NOFOLLOW ?? 0);

/** The disk itself. */
export const realDisk: Disk = {
  platform: process.platform,
  open: (path, how, mode) =>
    openSync(path, how === 'new' ? NEW : how === 'read' ? READ : constants.O_RDONLY, mode),
  read: (file, into, at) => readSync(file, into, at, into.length - at, null),
  write: (file, bytes, at) => writeSync(file, bytes, at),
  fsync: fsyncSync,
  close: closeSync,
  stat: (file) => entryOf(fstatSync(file)),
  look: (path) => entryOf(lstatSync(path)),
  follow: (path) => realpathSync(path),
  linkTarget: (path) => readlinkSync(path),
  rename: renameSync,
  unlink: unlinkSync,
  mkdir: (path) => {
    mkdirSync(path, 0o700);
  },
  list: (folder) => readdirSync(folder),
  runs: (pid) => {
    try {
      return process.kill(pid, 0);
    } catch (error) {
      return (error as NodeJS.ErrnoException).code === 'EPERM';
    }
  },
  wait: (ms) => {
    Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
  },
};

function entryOf(stat: ReturnType<typeof lstatSync> & object): Entry {
  const kind = stat.isFile()
    ? 'file'
    : stat.isDirectory()
      ? 'folder'
      : stat.isSymbolicLink()
        ? 'link'
        : 'other';
  return { kind, bytes: Number(stat.size) };
}

/** The code of a system's error, or nothing. */
export function codeOf(error: unknown): string {
  return (error as NodeJS.ErrnoException | null)?.code ?? '';
}

/** A refusal of our own, said like an error of the system. */
export function refusal(code: string): Error {
  return Object.assign(new Error(code), { code });
}
