import { bullets } from './bullets';

/** Columns of a terminal, and of a page printed in letters of one width. */
const COLUMNS = 80;

/**
 * A table with a line of heads where it fits 80 columns; else a line for each row, its cells after their heads.
 * A cell holds nothing that would end it.
 */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  const lines = [line(heads), `|${heads.map(() => '---|').join('')}`, ...rows.map(line)];
  return lines.every((one) => one.length <= COLUMNS)
    ? lines.join('\n')
    : bullets(rows.map((cells) => asLine(heads, cells)));
}

function asLine([, ...heads]: readonly string[], [name = '', ...cells]: readonly string[]): string {
  return `${name}: ${cells.map((cell, i) => `${lowered(heads[i]!)} ${cell}`).join('; ')}.`;
}

/** A head goes on inside a line. */
const lowered = (head: string) => head.charAt(0).toLowerCase() + head.slice(1);
