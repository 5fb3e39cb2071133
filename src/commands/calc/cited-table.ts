import { citeTable, type Table } from '../../tables/table';
import { sayCite } from '../../words/en/cites/say-cite';

/** Where tables come from, in one line. */
export const citedTables = (...tables: readonly Pick<Table<unknown>, 'source'>[]): string =>
  tables.map((table) => sayCite(citeTable(table))).join('; ');
