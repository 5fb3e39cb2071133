import { timesFigure } from '../../quantity/figure-arithmetic';
import type { Change } from './household';
import { changing } from './lessen';

const compressors = ['heat-pump', 'central-ac', 'second-ac'];

/** A soft starter on every compressor that may run in an outage. */
export const softStarter: Change = (_, loads, row) => {
  const [low, likely, high] = row.share!;
  return changing(
    loads,
    (load) => compressors.includes(load.id) && !load.offInOutage && load.startVa !== null,
    (load) => ({ ...load, startVa: timesFigure(load.startVa!, { low, likely, high }) }),
  );
};

/** The mask's own 12-volt cord: the device draws the same, and the pack's inverter rests at night. */
export const dcCord: Change = (_, loads) =>
  changing(
    loads,
    (load) => load.id === 'cpap',
    (load) => ({ ...load, dcFed: true }),
  );

/** Starting one after the other changes no load. */
export const startOrder: Change = (_, loads) => loads;
