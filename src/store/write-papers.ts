import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { visible } from '../quantity/visible';
import { type Disk, realDisk } from './disk';
import { makeFolder } from './make-folder';
import { readText } from './read-text';
import { saySystemError } from './say-system-error';
import { cleanBeside } from './sitting-lock';
import { lookAt } from './target-of';
import { type NewText, writeFilesWhole } from './write-file-whole';

/** A paper to write: its file name and text. */
export interface Paper {
  readonly file: string;
  readonly text: string;
  /** How a line that readers skip is written in this kind of file. */
  readonly comment: (text: string) => string;
}

export type Written =
  | { readonly ok: true; readonly paths: readonly string[] }
  | { readonly ok: false; readonly says: string };

const MARK = 'lampkeeper wrote this; sum';

/**
 * Write papers into a folder: all of them or none. One of our own that nobody changed since is replaced; any other file
 * of that name is left alone, and nothing at all is written, unless `force`.
 */
export function writePapers(
  folder: string,
  papers: readonly Paper[],
  force: boolean,
  disk: Disk = realDisk,
): Written {
  const files = papers.map((p) => ({ path: join(folder, p.file), text: signed(p) }));
  try {
    makeFolder(folder, disk);
    const kept = files.filter(({ path }) => !force && !mayReplace(path, disk));
    if (kept.length > 0) {
      return {
        ok: false,
        says: `${kept.map(({ path }) => path).join(' and ')} is there already and was changed since lampkeeper wrote it, or is not ours. Move it away, write to another folder with --out, or add --force to replace it.`,
      };
    }
    for (const { path } of files) cleanBeside(path, disk);
    writeFilesWhole(files, disk);
    return { ok: true, paths: files.map(({ path }) => path) };
  } catch (error) {
    return { ok: false, says: `${saySystemError(error, 'write', folder)}${sayMixed(files)}` };
  }
}

/** Which papers are new and which are not, where the last step failed between them; else nothing. */
function sayMixed(files: readonly NewText[]): string {
  const [done, left] = [true, false].map((is) =>
    files.filter((file) => holds(file) === is).map(({ path }) => path),
  );
  if (done!.length === 0 || left!.length === 0) return '';
  return ` These are the new ones: ${done!.join(', ')}. These are not: ${left!.join(', ')}.`;
}

function holds({ path, text }: NewText): boolean {
  try {
    return readText(path) === text;
  } catch {
    return false;
  }
}

/** The text with a last line that lets us know our own file again. */
export function signed({ text, comment }: Paper): string {
  const seen = visible(text);
  return `${seen}${comment(`${MARK} ${sumOf(seen)}`)}\n`;
}

/** True when nothing is there, or what is there is ours as we wrote it. */
function mayReplace(path: string, disk: Disk): boolean {
  const entry = lookAt(path, disk);
  if (entry === null) return true;
  if (entry.kind !== 'file') return false;
  const text = readText(path, disk);
  const start = text.lastIndexOf('\n', text.length - 2) + 1;
  const sum = new RegExp(`${MARK} ([0-9a-f]{16})`).exec(text.slice(start))?.[1];
  return sum !== undefined && sum === sumOf(text.slice(0, start));
}

function sumOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}
