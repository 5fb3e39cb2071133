import rules from '#compiled/tables/service-load-rules.js';
import type { Table } from '../table';

export type CodeEdition = 2017 | 2020 | 2023 | 2026;

/** One edition's numbers; null where we do not know them. */
export interface ServiceLoadRulesRow {
  edition: CodeEdition;
  vaPerFt2: number;
  circuitVa: number | null;
  lightingFirstVa: number | null;
  lightingSecondVa: number | null;
  lightingSecondShare: number | null;
  lightingRestShare: number | null;
  optionalFirstVa: number | null;
  existingFirstVa: number | null;
  restShare: number | null;
  dryerLeastVa: number | null;
  /** null before 2023: no least figure, the nameplate counts. */
  evLeastVa: number | null;
  manyAppliancesFrom: number | null;
  manyAppliancesShare: number | null;
  neutralShare: number | null;
  /** A motor left out as the smaller of two loads still counts as the largest motor (220.60 from 2020). */
  leftOutMotorCounts: boolean | null;
  unitLoadSection: string;
  demandSection: string | null;
  optionalSection: string;
  existingSection: string;
}

/** Numbers of the dwelling load calculation by code edition. NEC Article 220. */
export const serviceLoadRules: Table<ServiceLoadRulesRow> = rules;

/** An edition whose numbers we hold in full. */
export type CompleteServiceLoadRules = {
  readonly [K in keyof ServiceLoadRulesRow]: K extends 'evLeastVa'
    ? number | null
    : NonNullable<ServiceLoadRulesRow[K]>;
};

/** The numbers of an edition, or null where we do not hold all of them (2026): say so, never fill in. */
export function serviceLoadRulesOf(edition: CodeEdition): CompleteServiceLoadRules | null {
  const row = serviceLoadRules.rows.find((r) => r.edition === edition);
  if (!row) return null;
  const missing = Object.entries(row).some(([key, v]) => v === null && key !== 'evLeastVa');
  return missing ? null : (row as CompleteServiceLoadRules);
}
