import labels from '#compiled/tables/compressor-labels.js';
import type { Table } from '../table';

export interface CompressorLabelRow {
  tons: number;
  runningLow: number;
  runningHigh: number;
  lockedRotorLow: number;
  lockedRotorHigh: number;
}

/** Bands of label current of single-stage compressors, A at 230 V by tons, from memory. */
export const compressorLabels: Table<CompressorLabelRow> = labels;
