import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { visible } from '../quantity/visible';
import { realDisk } from './disk';
import { makeFolder } from './make-folder';
import { readText } from './read-text';
import { saySystemError } from './say-system-error';
import { lookAt } from './target-of';
import { writeFileWhole } from './write-file-whole';

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
 * Write papers into a folder. One of our own that nobody changed since is replaced; any other file of that name is
 * left alone, and nothing at all is written, unless `force`.
 */
export function writePapers(folder: string, papers: readonly Paper[], force: boolean): Written {
  try {
    makeFolder(folder);
    const kept = papers
      .map((p) => join(folder, p.file))
      .filter((path) => !force && !mayReplace(path));
    if (kept.length > 0) {
      return {
        ok: false,
        says: `${kept.join(' and ')} is there already and was changed since lampkeeper wrote it, or is not ours. Move it away, write to another folder with --out, or add --force to replace it.`,
      };
    }
    for (const paper of papers) writeFileWhole(join(folder, paper.file), signed(paper));
    return { ok: true, paths: papers.map((p) => join(folder, p.file)) };
  } catch (error) {
    return { ok: false, says: saySystemError(error, 'write', folder) };
  }
}

/** The text with a last line that lets us know our own file again. */
export function signed({ text, comment }: Paper): string {
  const seen = visible(text);
  return `${seen}${comment(`${MARK} ${sumOf(seen)}`)}\n`;
}

/** True when nothing is there, or what is there is ours as we wrote it. */
function mayReplace(path: string): boolean {
  const entry = lookAt(path, realDisk);
  if (entry === null) return true;
  if (entry.kind !== 'file') return false;
  const text = readText(path);
  const start = text.lastIndexOf('\n', text.length - 2) + 1;
  const sum = new RegExp(`${MARK} ([0-9a-f]{16})`).exec(text.slice(start))?.[1];
  return sum !== undefined && sum === sumOf(text.slice(0, start));
}

function sumOf(text: string): string {
  return createHash('sha256').update(text).digest('hex').slice(0, 16);
}
