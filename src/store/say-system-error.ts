const because: Readonly<Record<string, string>> = {
  EACCES:
    'this folder or file may not be written to or read by you. Use another folder, or change its permissions.',
  EPERM: 'the system does not permit it. Use another folder.',
  EROFS: 'this disk can only be read. Use a folder on another disk.',
  ENOSPC: 'the disk is full. Free some space; nothing you typed is lost while this window is open.',
  EDQUOT:
    'your share of the disk is used up. Free some space; nothing you typed is lost while this window is open.',
  ENOENT: 'there is no such file or folder. Check the name.',
  EISDIR: 'this is a folder, not a file. Give the name of a file.',
  ENOTDIR: 'a part of this path is a file, not a folder. Check the name.',
  EMFILE: 'too many files are open. Close some programs.',
  ENAMETOOLONG: 'the name is too long. Choose a shorter one.',
};

/** A failed read, write or removal as a sentence that says what to do. */
export function saySystemError(
  error: unknown,
  doing: 'read' | 'write' | 'remove',
  path: string,
): string {
  const code = (error as NodeJS.ErrnoException | null)?.code ?? '';
  const why = because[code] ?? `${error instanceof Error ? error.message : String(error)}.`;
  return `Could not ${doing} ${path}: ${why}`;
}
