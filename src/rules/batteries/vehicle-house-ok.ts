import type { Rule } from '../rule';
import { vehicleSource } from '../when/vehicle-source';

/** A vehicle that feeds a house needs the proper switch and the maker's word. */
export const vehicleHouseOk: Rule = {
  id: 'vehicle-house-ok',
  applies: ({ facts }, routes) => vehicleSource(facts, routes),
};
