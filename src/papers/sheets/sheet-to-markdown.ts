import { blocksToMarkdown } from '../document/to-markdown';
import type { Sheet } from './sheet';

/** A sheet as Markdown of at most 80 columns. */
export function sheetToMarkdown({ title, purpose, blocks }: Sheet): string {
  return blocksToMarkdown([{ sort: 'say', text: purpose }, ...blocks]).replace(
    /^/,
    `## ${title}\n\n`,
  );
}
