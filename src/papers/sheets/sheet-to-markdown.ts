import { blocksToMarkdown } from '../document/to-markdown';
import type { Sheet } from './sheet';

/** Lines of a page printed in letters of one width. */
const PAGE_LINES = 54;

/** A sheet as Markdown of at most 80 columns; without empty lines before headings and lines in bold where it would not fit a page. */
export function sheetToMarkdown(sheet: Sheet): string {
  const loose = written(sheet, false);
  return loose.split('\n').length <= PAGE_LINES ? loose : written(sheet, true);
}

const written = ({ title, purpose, blocks }: Sheet, tight: boolean) =>
  `## ${title}\n${blocksToMarkdown([{ kind: 'say', text: purpose }, ...blocks], tight)}`;
