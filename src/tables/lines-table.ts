import type { Table } from './table';

/**
 * A long table as the program carries it: a row a line, read when it is asked for. A plan takes a few of a thousand stations, and
 * reading all of them takes longer than any other table.
 */
export interface LinesTable extends Omit<Table, 'rows'> {
  readonly columns: readonly string[];
  /** Columns that hold words; all others hold numbers. */
  readonly words: readonly string[];
  /** The values of a row, tabs between them; nothing stands for null. */
  readonly lines: readonly string[];
}

type Value = string | number | null;
export type Row = Readonly<Record<string, Value>>;

/** The rows of a table as lines. Throws RangeError for a word with a tab in it, or a column that holds words and numbers. */
export function asLines(rows: readonly Row[]) {
  const columns = Object.keys(rows[0] ?? {});
  const words = columns.filter((column) => rows.some((row) => typeof row[column] === 'string'));
  for (const row of rows) {
    for (const column of columns) {
      const value = row[column] ?? null;
      const mixed = words.includes(column) && typeof value === 'number';
      if (mixed || (typeof value === 'string' && (value.includes('\t') || value === '')))
        throw new RangeError(`column ${column} cannot be kept as lines: ${value}`);
    }
  }
  const lines = rows.map((row) => columns.map((column) => row[column] ?? '').join('\t'));
  return { columns, words, lines };
}

/** One row of it. Throws RangeError where there is none. */
export function rowAt(table: LinesTable, at: number): Record<string, Value> {
  const line = table.lines[at];
  if (line === undefined) throw new RangeError(`${table.name} has no row ${at}`);
  const values = line.split('\t');
  return Object.fromEntries(
    table.columns.map((column, i) => [column, typed(table, column, values[i]!)]),
  );
}

function typed({ words }: LinesTable, column: string, text: string): Value {
  if (text === '') return null;
  return words.includes(column) ? text : Number(text);
}
