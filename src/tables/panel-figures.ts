import assumptions from '#compiled/tables/panel-assumptions.js';
import losses from '#compiled/tables/panel-losses.js';
import type { Table } from './table';

/** One cause of loss between sun and inverter, likely and with its range, 0 to 1. */
export interface PanelLoss {
  cause: 'dirt-and-snow' | 'shade' | 'wires-and-mismatch' | 'below-label';
  says: string;
  share: number;
  low: number;
  high: number;
}

/** Losses between sun and inverter, by cause. */
export const panelLosses: Table<PanelLoss> = losses;

/** Panel, ground, inverter and snow figures that stand in until the household says otherwise. */
export const panelAssumptions: Table<{
  name: string;
  value: number;
  low?: number;
  high?: number;
  unit: string;
  why: string;
}> = assumptions;

/** One assumed figure by its name. Throws RangeError on a name that is not in the table. */
export function panelAssumption(name: string): number {
  const row = panelAssumptions.rows.find((one) => one.name === name);
  if (row === undefined) throw new RangeError(`no panel assumption is called ${name}`);
  return row.value;
}
