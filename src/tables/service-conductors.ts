import conductors from '#compiled/tables/nec-310-12.js';
import type { Table } from './table';

export interface ServiceConductorRow {
  ratingAmps: number;
  copper: string;
  aluminium: string;
}

/** Service or main-feeder conductors of a dwelling by rating, A. NEC Table 310.12(A). */
export const serviceConductors: Table<ServiceConductorRow> = conductors;
