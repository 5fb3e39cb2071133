import type { Table } from './table';

/** A table of single figures, each with a name of its own. */
export interface NamedValueRow {
  id: string;
  value: number;
  unit: string;
  standing: 'published' | 'practice' | 'memory' | 'judgement';
  words?: string;
}

/** The figure called `id`; throws RangeError when the table has none of that name. */
export function namedValue<Row extends NamedValueRow>(table: Table<Row>, id: string): Row {
  const row = table.rows.find((r) => r.id === id);
  if (!row) throw new RangeError(`${table.name} has no figure called ${id}`);
  return row;
}
