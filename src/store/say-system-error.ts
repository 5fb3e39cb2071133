import { codeOf } from './disk';

const because: Readonly<Record<string, string>> = {
  EACCES:
    'this folder or file may not be written to or read by you. Use another folder, or change its permissions.',
  EPERM: 'the system does not permit it. Use another folder.',
  EBUSY: 'another program holds it. Close that program.',
  EROFS: 'this disk can only be read. Use a folder on another disk.',
  ENOSPC: 'the disk is full. Free some space.',
  EDQUOT: 'your share of the disk is used up. Free some space.',
  EIO: 'the disk or the connection to it fails. Use a folder on another disk.',
  ENOENT: 'there is no such file or folder. Check the name.',
  EISDIR: 'this is a folder, not a file. Give the name of a file.',
  ENOTDIR: 'a part of this path is a file, not a folder. Check the name.',
  EEXIST: 'something of that name is there already. Move it away.',
  ELOOP: 'these links lead in a circle. Give the name of the file itself.',
  EMFILE: 'too many files are open. Close some programs.',
  ENAMETOOLONG: 'the name is too long. Choose a shorter one.',
  DANGLING:
    'this is a link, and the file it leads to is not there. Take the link away, or mend it.',
  NOFILE: 'this is a pipe or a device, not a file. Give the name of a file.',
  TOOLARGE: 'this file is far too large. Check that it is the right one.',
  UTF16:
    'this file is written in UTF-16. Open it in your editor and save it as UTF-8; the words may stay as they are.',
  NULBYTE:
    'there are zero bytes in this file, so it is no text, or it was cut off. Start again from a copy that lampkeeper wrote.',
  NOUTF8:
    'some letters in this file are not in UTF-8. Open it in your editor and save it as UTF-8.',
};

/** A failed read, write or removal as a sentence that says what to do. */
export function saySystemError(
  error: unknown,
  doing: 'read' | 'write' | 'remove',
  path: string,
): string {
  const why =
    because[codeOf(error)] ?? `${error instanceof Error ? error.message : String(error)}.`;
  return `Could not ${doing} ${path}: ${why}`;
}
