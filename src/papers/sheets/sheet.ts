import type { Block } from '../document/block';

/** A paper for one reader. */
export type SheetId =
  | 'fridge'
  | 'family'
  | 'year'
  | 'quote'
  | 'inspector'
  | 'insurer'
  | 'landlord'
  | 'utility'
  | 'health';

export interface Sheet {
  readonly id: SheetId;
  readonly title: string;
  /** Who reads it and what it is for, in a line. */
  readonly purpose: string;
  readonly blocks: readonly Block[];
}
