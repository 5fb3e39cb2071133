import values from '#compiled/tables/siting-distances.js';
import type { Cite } from '../quantity/cite';
import type { NamedValueRow } from './named-values';
import type { Table } from './table';

/** Least distances and largest sizes around a home. */
export const sitingDistances: Table<NamedValueRow & { readonly source: Cite }> = values;
