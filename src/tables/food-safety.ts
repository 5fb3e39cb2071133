import values from '#compiled/tables/food-safety.js';
import type { NamedValueRow } from './named-values';
import type { Table } from './table';

/** How long food keeps without power. USDA and FDA. */
export const foodSafety: Table<NamedValueRow> = values;
