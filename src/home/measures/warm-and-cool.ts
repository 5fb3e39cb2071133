import type { Triple } from '../../tables/household-loads';
import type { MeasureRow } from '../../tables/measures';
import { BALANCE_C } from '../heat/heat-need';
import type { Load } from '../home';
import { hardDaysC } from '../weather/climate-hours';
import type { Change } from './household';
import { changing, lessened } from './lessen';

/** It warms rooms in winter: what follows the cold and is on in an outage. */
export const warms = (load: Load) =>
  !load.offInOutage && ['cold', 'both'].includes(load.follows) && load.id !== 'heat-tape';

/** It cools rooms in summer. */
export const cools = (load: Load) => !load.offInOutage && ['heat', 'both'].includes(load.follows);

const BALANCE_F = 32 + 1.8 * BALANCE_C;
const toF = (celsius: number) => 32 + 1.8 * celsius;

/**
 * Share of heating or cooling that is left when the room is kept so many degrees nearer to the outdoors: the balance
 * moves with the room, so on a day of mean T it is 1 - change / |balance - T|, between 0 and 1.
 */
export function leftOfDegrees(changeF: number, dayF: number): number {
  const span = Math.abs(BALANCE_F - dayF);
  return span <= changeF ? 0 : 1 - changeF / span;
}

/** The high end keeps half of the saving: a house that leaks, or a thermostat that somebody turns back. */
function shareAt(row: MeasureRow, dayC: number): Triple {
  const left = leftOfDegrees(Math.abs(row.setF! - row.usualF!), toF(dayC));
  return [left, left, (1 + left) / 2];
}

export const heatLower: Change = ({ site }, loads, row) => {
  const share = shareAt(row, hardDaysC(site.place.climate).hardCold);
  return changing(loads, warms, (load) => {
    const { winter, mild } = lessened(load, share, row).kwhPerDay;
    return { ...load, kwhPerDay: { ...load.kwhPerDay, winter, mild } };
  });
};

export const coolHigher: Change = ({ site }, loads, row) => {
  const share = shareAt(row, hardDaysC(site.place.climate).hardHot);
  return changing(loads, cools, (load) => {
    const { summer } = lessened(load, share, row).kwhPerDay;
    return { ...load, kwhPerDay: { ...load.kwhPerDay, summer } };
  });
};

/** Nothing that warms needs power; a heat pump goes on cooling. */
const withoutPower: Change = (_, loads, row) =>
  changing(loads, warms, (load) => {
    if (load.follows === 'cold') return null;
    const { winter, mild } = lessened(load, [0, 0, 0], row).kwhPerDay;
    return { ...load, follows: 'heat', kwhPerDay: { ...load.kwhPerDay, winter, mild } };
  });

export const stoveHeat = withoutPower;
export const ventedHeater = withoutPower;

/** Drafts and insulation act on heating and cooling alike. */
export const tighterHouse: Change = (_, loads, row) =>
  changing(
    loads,
    (load) => warms(load) || cools(load),
    (load) => lessened(load, row.share!, row),
  );
