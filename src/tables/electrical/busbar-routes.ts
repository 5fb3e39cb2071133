import routes from '#compiled/tables/busbar-routes.js';
import type { Table } from '../table';

export type BusbarRouteId =
  | 'opposite-end'
  | 'any-place'
  | 'sum-of-breakers'
  | 'center-fed'
  | 'supply-side'
  | 'power-control';

export interface BusbarRouteRow {
  route: BusbarRouteId;
  section2017: string | null;
  section2020: string | null;
  section2023: string | null;
}

/** Ways to connect a source to a panel and where the code has them. NEC 705.12. */
export const busbarRoutes: Table<BusbarRouteRow> = routes;
