import { bullets } from './bullets';

/** Columns of a terminal, and of a page printed in letters of one width. */
const COLUMNS = 80;

/**
 * A table with a line of heads where it fits 80 columns; else a line for each row, its cells after their heads.
 * A cell holds nothing that would end it.
 */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  return fittingTable(heads, rows)?.join('\n') ?? bullets(rowsAsLines(heads, rows));
}

/** The lines of a table; null where one is wider than 80 columns. */
export function fittingTable(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
): string[] | null {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const lines = [line(heads), `|${heads.map(() => '---|').join('')}`, ...rows.map(line)];
  return lines.every((one) => one.length <= COLUMNS) ? lines : null;
}

/** What a table that is too wide becomes: "Lamp: while it runs 9 W; when it starts 9 VA." */
export const rowsAsLines = (heads: readonly string[], rows: readonly (readonly string[])[]) =>
  rows.map((cells) => asLine(heads, cells));

function asLine([, ...heads]: readonly string[], [name = '', ...cells]: readonly string[]): string {
  const each = cells.map((cell, i) => `${lowered(heads[i]!)} ${cell}`);
  return `${name}: ${each.join('; ')}.`;
}

/** A head goes on inside a line; one of a single letter, or of capitals, is a sign and stays. */
const lowered = (head: string) =>
  /^[A-Z](?![a-z])/.test(head) ? head : head.charAt(0).toLowerCase() + head.slice(1);
