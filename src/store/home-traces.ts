import { basename, dirname, join, resolve } from 'node:path';
import { codeOf, type Disk, realDisk } from './disk';
import { HOME_KEY, homeFileName, nameOfFile } from './home-file';
import { readText } from './read-text';
import { lockOf } from './sitting-lock';
import { syncFolder } from './write-file-whole';
import { isPaper } from './write-papers';

/**
 * Everything this program has made for a home, in its folder and in those of its papers: the home file, the copy to
 * share, papers, files begun and never finished, a lock left behind. Where the home file is a link, what it leads to
 * is named too.
 */
export function tracesOf(home: string, paperFolders: readonly string[], disk: Disk = realDisk) {
  const name = nameOfFile(home);
  const folder = dirname(home);
  const found: string[] = [];
  const add = (path: string) => {
    const known = found.some((one) => resolve(one) === resolve(path));
    if (!known && isThere(path, disk)) found.push(path);
  };
  add(home);
  if (isThere(home, disk) && disk.look(home).kind === 'link') add(disk.follow(home));
  const files = [basename(home), homeFileName(name), homeFileName(`${name}-to-share`)];
  add(join(folder, homeFileName(`${name}-to-share`)));
  add(lockOf(home, disk));
  for (const place of new Set([folder, ...paperFolders])) {
    for (const file of listed(place, disk)) {
      const [begun] = file.split('.new-');
      const isBegun = /\.new-\d+$/.test(file);
      const ours = isBegun
        ? files.includes(begun!) || isPaperName(begun!, name)
        : isPaperName(file, name) && isOurs(join(place, file), disk);
      if (ours) add(join(place, file));
    }
  }
  return found;
}

/** It says of itself that it is a home, whatever else is wrong in it: nothing else is ever taken away as one. Throws what reading throws. */
export const isHomeFile = (path: string, disk: Disk = realDisk): boolean =>
  HOME_KEY_LINE.test(readText(path, disk));

const HOME_KEY_LINE = new RegExp(`^\\{?[ \\t]*["']?${HOME_KEY}["']?\\s*:`, 'm');

/** Files that are called after the home and are none of ours: left alone, and named. */
export function namedAlike(home: string, ours: readonly string[], disk: Disk = realDisk): string[] {
  const start = `${nameOfFile(home)}.`;
  const known = new Set(ours.map((path) => resolve(path)));
  return listed(dirname(home), disk)
    .filter((file) => file.startsWith(start))
    .map((file) => join(dirname(home), file))
    .filter((path) => !known.has(resolve(path)));
}

/** Take files away, the name of each gone from its folder for good. Gives the first that could not be, with its error. */
export function removeFiles(
  paths: readonly string[],
  disk: Disk = realDisk,
): { readonly path: string; readonly error: unknown } | null {
  for (const path of paths) {
    try {
      disk.unlink(path);
    } catch (error) {
      if (codeOf(error) !== 'ENOENT') return { path, error };
    }
  }
  for (const folder of new Set(paths.map(dirname))) {
    try {
      syncFolder(folder, disk);
    } catch (error) {
      return { path: folder, error };
    }
  }
  return null;
}

/** NAME.plan.md and the like. A home called NAME.b has files of its own, with a word more. */
const isPaperName = (file: string, name: string) =>
  file.startsWith(`${name}.`) && /^[a-z-]+\.(yaml|md|html|ics)$/.test(file.slice(name.length + 1));

function isOurs(path: string, disk: Disk): boolean {
  try {
    return disk.look(path).kind === 'file' && isPaper(readText(path, disk));
  } catch {
    return false;
  }
}

function isThere(path: string, disk: Disk): boolean {
  try {
    disk.look(path);
    return true;
  } catch {
    return false;
  }
}

function listed(folder: string, disk: Disk): string[] {
  try {
    return disk.list(folder).sort();
  } catch {
    return [];
  }
}
