import type { Load } from '../home';
import type { Change } from './household';
import { changing } from './lessen';

/** The loads of a kind need no power at all with the measure. */
const gone =
  (which: (load: Load) => boolean): Change =>
  (_, loads) =>
    changing(loads, which, () => null);

/** A battery lantern in place of the lights of the house. */
export const lantern = gone((load) => load.id === 'lights-led');

/** Clothes and dishes wait. */
export const laundryLater = gone((load) =>
  ['washer', 'dishwasher', 'electric-dryer'].includes(load.id),
);

/** Food is made without electricity. */
export const cookOtherwise = gone((load) => load.id === 'microwave');

/** What is always on and nobody needs. */
export const boxesOff = gone((load) => load.id === 'house-standby');

/** The laptop that is there does what the desk computer did, where it counts for as much. */
export const laptopInstead: Change = (_, loads) => {
  const [laptop, desktop] = ['laptop', 'desktop'].map((id) => loads.find((load) => load.id === id));
  return laptop !== undefined && laptop.rank === desktop?.rank
    ? changing(
        loads,
        (load) => load.id === 'desktop',
        () => null,
      )
    : loads;
};
