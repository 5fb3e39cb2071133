import values from '#compiled/tables/fuel-storage.js';
import type { NamedValueRow } from './named-values';
import type { Table } from './table';

/** Generator fuel commonly allowed at a home. */
export const fuelStorage: Table<NamedValueRow> = values;
