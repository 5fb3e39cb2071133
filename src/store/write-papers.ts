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
  /** The line after which it stands, where it may not be the last. */
  readonly commentAfter?: string;
  /** The kind of file asks for CR LF at the end of each line (a calendar does). */
  readonly crLf?: boolean;
}

export type Written =
  | { readonly ok: true; readonly paths: readonly string[] }
  | { readonly ok: false; readonly says: string };

const MARK = 'lampkeeper wrote this; sum';
/** The line of the mark, in which a calendar escapes the semicolon. */
const MARK_LINE = /^[^\n]*lampkeeper wrote this\\?; sum ([0-9a-f]{16})[^\n]*\n/gm;

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
    if (kept.length > 0) return { ok: false, says: sayKept(kept.map(({ path }) => path)) };
    for (const { path } of files) cleanBeside(path, disk);
    writeFilesWhole(files, disk);
    return { ok: true, paths: files.map(({ path }) => path) };
  } catch (error) {
    return { ok: false, says: `${saySystemError(error, 'write', folder)}${sayMixed(files)}` };
  }
}

/** What writing these papers would do: nothing is made or changed. Paths that would be new, and those replaced. */
export function wouldWrite(
  folder: string,
  papers: readonly Pick<Paper, 'file'>[],
  force: boolean,
  disk: Disk = realDisk,
):
  | { readonly ok: true; readonly fresh: string[]; readonly replaced: string[] }
  | { readonly ok: false; readonly says: string } {
  const paths = papers.map(({ file }) => join(folder, file));
  try {
    const kept = paths.filter((path) => !force && !mayReplace(path, disk));
    if (kept.length > 0) return { ok: false, says: sayKept(kept) };
    const isThere = (path: string) => lookAt(path, disk) !== null;
    return {
      ok: true,
      fresh: paths.filter((path) => !isThere(path)),
      replaced: paths.filter(isThere),
    };
  } catch (error) {
    return { ok: false, says: saySystemError(error, 'write', folder) };
  }
}

const sayKept = (paths: readonly string[]) =>
  paths.length === 1
    ? `${paths[0]} is there already and was changed since lampkeeper wrote it, or is not ours. Move it away, write to another folder with --out, or add --force to replace it.`
    : `${paths.join(' and ')} are there already, and were changed since lampkeeper wrote them, or are not ours. Move them away, write to another folder with --out, or add --force to replace them.`;

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

/** The text with a line in it that lets us know our own file again: the last, unless the paper says after which. */
export function signed({ text, comment, commentAfter, crLf = false }: Paper): string {
  const seen = visible(text);
  const ends = (lines: string) => (crLf ? lines.replaceAll('\n', '\r\n') : lines);
  const mark = `${comment(`${MARK} ${sumOf(ends(seen))}`)}\n`;
  const place =
    commentAfter === undefined
      ? seen.length
      : seen.indexOf(`${commentAfter}\n`) + commentAfter.length + 1;
  return ends(`${seen.slice(0, place)}${mark}${seen.slice(place)}`);
}

/** True when nothing is there, or what is there is ours as we wrote it. */
function mayReplace(path: string, disk: Disk): boolean {
  const entry = lookAt(path, disk);
  if (entry === null) return true;
  if (entry.kind !== 'file') return false;
  const text = readText(path, disk);
  const mark = [...text.matchAll(MARK_LINE)].at(-1);
  if (mark === undefined) return false;
  const rest = text.slice(0, mark.index) + text.slice(mark.index + mark[0].length);
  return mark[1] === sumOf(rest);
}

/** A paper of ours, changed since or not: it carries our line. */
export function isPaper(text: string): boolean {
  return [...text.matchAll(MARK_LINE)].length > 0;
}

function sumOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}
