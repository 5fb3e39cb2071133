import values from '#compiled/tables/siting-distances.js';
import type { NamedValueRow } from './named-values';
import type { Table } from './table';

/** Least distances and largest sizes around a home. */
export const sitingDistances: Table<NamedValueRow> = values;
