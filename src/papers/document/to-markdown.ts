import { folded } from '../pictures/folded';
import type { PictureTable } from '../pictures/picture';
import type { Block } from './block';

/** Columns of the Markdown of a sheet: it fits a terminal and a letter page. */
export const MARKDOWN_COLUMNS = 80;

/** Blocks as Markdown of at most 80 columns, an empty line between any two blocks. */
export function blocksToMarkdown(blocks: readonly Block[]): string {
  return blocks.map((block) => linesOf(block).join('\n')).join('\n\n');
}

function linesOf(block: Block): string[] {
  switch (block.sort) {
    case 'heading':
      return [`### ${escaped(block.text)}`];
    case 'say':
      return block.strong
        ? folded(escaped(block.text), MARKDOWN_COLUMNS - 4).map((line) => `**${line}**`)
        : folded(escaped(block.text), MARKDOWN_COLUMNS);
    case 'bullets':
      return block.items.flatMap((item) => hanging('- ', item));
    case 'steps':
      return block.items.flatMap((item, i) =>
        hanging(`${i + 1}. ${block.boxes ? '[ ] ' : ''}`, item),
      );
    case 'boxes':
      return block.items.flatMap((item) => hanging('- [ ] ', item));
    case 'blanks':
      return inPairs(block.names).flatMap((names) =>
        hanging('- ', names.map((name) => `${name}: ${RULED}`).join('  ')),
      );
    case 'table':
      return tableLines(block);
    case 'picture': {
      const lines = block.picture.inTerminal(MARKDOWN_COLUMNS - 4, 'ascii');
      return ['```text', ...lines, '```'];
    }
  }
}

const RULED = '\\_'.repeat(12);

/** Two short names share a line, which saves a sheet a page. */
function inPairs(names: readonly string[]): string[][] {
  const lines: string[][] = [];
  for (const name of names) {
    const last = lines.at(-1);
    const room = last?.length === 1 && last[0]!.length + name.length <= PAIR;
    if (room) last.push(name);
    else lines.push([name]);
  }
  return lines;
}

/** Letters of two names that fit beside each other with their lines to write on. */
const PAIR = 30;

function hanging(mark: string, text: string): string[] {
  const pad = ' '.repeat(mark.length);
  const said = text.split(RULED).map(escaped).join(RULED);
  return folded(said, MARKDOWN_COLUMNS - mark.length).map(
    (line, i) => (i === 0 ? mark : pad) + line,
  );
}

/** A table where it fits the columns, else each row as a small list under its first cell. */
export function tableLines({ head, rows }: PictureTable): string[] {
  const line = (cells: readonly string[]) =>
    `| ${cells.map((cell) => escaped(cell).replace(/\|/g, '\\|')).join(' | ')} |`;
  const table = [line(head), `|${head.map(() => '---').join('|')}|`, ...rows.map(line)];
  if (table.every((one) => one.length <= MARKDOWN_COLUMNS)) return table;
  return rows.flatMap(([first = '', ...rest]) =>
    hanging('- ', [first, ...rest.map((cell, i) => `${head[i + 1]}: ${cell}`)].join('; ')),
  );
}

/** Signs that Markdown would read as marks, where the text means itself. */
function escaped(text: string): string {
  return text.replace(/[\\`*_<>[\]#~]/g, (sign) => `\\${sign}`);
}
