import conductors from '#compiled/tables/nec-310-12.js';
import type { Table } from '../table';

export interface ServiceConductorRow {
  ratingAmps: number;
  copper: string;
  aluminum: string;
}

/** Service or main-feeder conductors of a dwelling by rating, A. NEC Table 310.12(A). */
export const serviceConductors: Table<ServiceConductorRow> = conductors;

/** Row for a service of `ratingAmps`: the first rating that is at least as large; null above 400 A. */
export function serviceConductorFor(ratingAmps: number): ServiceConductorRow | null {
  return serviceConductors.rows.find((row) => row.ratingAmps >= ratingAmps) ?? null;
}
