import type { Signs } from './blocks';
import type { Drawing } from './drawing';

/** One picture in the three forms a reader may need: drawn, in a terminal, and as a table read aloud line by line. */
export interface Picture {
  readonly drawing: Drawing;
  /** Lines of at most `width` characters. */
  readonly inTerminal: (width: number, signs: Signs) => readonly string[];
  readonly table: PictureTable;
}

export interface PictureTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
