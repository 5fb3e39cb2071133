import type { Route } from './route';

/** The generator is bought: one that is there has one size, and its own volts. */
export const buysGenerator = ({ parts }: Pick<Route, 'parts'>): boolean =>
  parts.some(
    ({ equipmentClass, costUsd }) =>
      (equipmentClass === 'portable-engine' || equipmentClass === 'standby-engine') &&
      costUsd.high > 0,
  );
