import { codeOf, type Disk, refusal } from './disk';

/** The file a path means once links are followed. Throws where it is no file, or a link that leads nowhere. */
export function targetOf(path: string, disk: Disk): string {
  const entry = lookAt(path, disk);
  if (entry === null) return path;
  if (entry.kind !== 'link') return fileAt(path, entry.kind);
  let target: string;
  try {
    target = disk.follow(path);
  } catch (error) {
    throw codeOf(error) === 'ENOENT' ? refusal('DANGLING') : error;
  }
  return fileAt(target, disk.look(target).kind);
}

/** What stands at a path, or null where nothing does. */
export function lookAt(path: string, disk: Disk): ReturnType<Disk['look']> | null {
  try {
    return disk.look(path);
  } catch (error) {
    if (codeOf(error) === 'ENOENT') return null;
    throw error;
  }
}

function fileAt(path: string, kind: string): string {
  if (kind === 'file') return path;
  throw refusal(kind === 'folder' ? 'EISDIR' : 'NOFILE');
}
