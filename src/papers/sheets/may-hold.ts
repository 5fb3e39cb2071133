import type { SheetId } from './sheet';

/** What a household would not hand to a stranger. */
export type Private = 'name' | 'people' | 'health' | 'money' | 'place' | 'leaving';

/** What each sheet may hold of it; the household hands the family's sheets to nobody. */
export const mayHold: Readonly<Record<SheetId, readonly Private[]>> = {
  fridge: ['name', 'people', 'health', 'leaving', 'place'],
  family: ['name', 'people', 'health', 'money', 'leaving', 'place'],
  year: ['name', 'health'],
  quote: [],
  inspector: [],
  insurer: [],
  landlord: [],
  utility: [],
  health: ['name', 'health', 'leaving'],
};

/** Sheets that stand together in the household's own file; each of the others is a file of its own. */
export const familySheets: readonly SheetId[] = ['fridge', 'family', 'year'];
