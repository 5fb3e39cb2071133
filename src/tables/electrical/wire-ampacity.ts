import ampacities from '#compiled/tables/nec-310-16.js';
import type { Table } from '../table';
import { reactancePer1000Ft } from './wire-reactance';
import { wireResistance } from './wire-resistance';

export interface WireAmpacityRow {
  size: string;
  copper60: number;
  copper75: number;
  aluminum60: number | null;
  aluminum75: number | null;
  /** Largest breaker by 240.4(D), A; null where that rule sets none. */
  breakerCopper: number | null;
  breakerAluminum: number | null;
}

export type WireMetal = 'copper' | 'aluminum';
export type TerminalColumn = 60 | 75;

/** One wire of one metal and column, as the wire-size formula wants it. */
export interface WireChoice {
  readonly size: string;
  readonly ampacityAmps: number;
  readonly maxBreakerAmps: number | null;
  readonly ohmPer1000Ft: number;
  /** In steel conduit, the larger; 0 below 4 AWG. */
  readonly reactancePer1000Ft: number;
}

/** Ampacity by wire size, A. NEC Table 310.16 with the breaker limits of 240.4(D). */
export const wireAmpacity: Table<WireAmpacityRow> = ampacities;

/**
 * The wires of one metal and terminal column, thin to thick, with ampacity (310.16), breaker limit (240.4(D))
 * resistance (Chapter 9 Table 8, stranded) and reactance (Table 9). Column 60 is for NM cable and for terminals not marked 75 C at
 * 100 A or less. Sizes without a figure in that column are left out.
 */
export function wireChoices(metal: WireMetal, column: TerminalColumn): WireChoice[] {
  return wireAmpacity.rows.flatMap((row) => {
    const ampacityAmps = row[`${metal}${column}`];
    const resistance = wireResistance.rows.find((r) => r.size === row.size);
    const ohmPer1000Ft = metal === 'copper' ? resistance?.copperStranded : resistance?.aluminum;
    if (ampacityAmps === null || !ohmPer1000Ft) return [];
    const maxBreakerAmps = metal === 'copper' ? row.breakerCopper : row.breakerAluminum;
    return [
      {
        size: row.size,
        ampacityAmps,
        maxBreakerAmps,
        ohmPer1000Ft,
        reactancePer1000Ft: reactancePer1000Ft(row.size),
      },
    ];
  });
}
