import pathways from '#compiled/tables/roof-pathways.js';
import type { Table } from './table';

export interface RoofPathwayRow {
  ridgeSetbackIn: number;
  pathwayIn: number;
  planShareUpTo: number;
  planShareUpToSprinklered: number;
  exemptPitchRise: number;
}

/** Strips to be kept clear on a roof with panels, the narrow ridge strip first. IRC R324.6. */
export const roofPathways: Table<RoofPathwayRow> = pathways;
