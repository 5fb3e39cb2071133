import { dirname, resolve } from 'node:path';
import { codeOf, type Disk, realDisk } from './disk';

/**
 * Make a folder and those above it, for its owner only. Each is tried once: where the system will not have one it
 * throws, also in places where asking again and again would never end.
 */
export function makeFolder(path: string, disk: Disk = realDisk): void {
  const whole = resolve(path);
  try {
    makeOne(whole, disk);
  } catch (error) {
    const above = dirname(whole);
    if (codeOf(error) !== 'ENOENT' || above === whole) throw error;
    makeFolder(above, disk);
    makeOne(whole, disk);
  }
}

function makeOne(path: string, disk: Disk): void {
  try {
    disk.mkdir(path);
  } catch (error) {
    // What is no folder shows itself when something is to be written into it.
    if (codeOf(error) !== 'EEXIST') throw error;
  }
}
