import { figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import type { Load } from '../home';
import type { LoadContext } from './context';

/**
 * Strips beside a heat pump: they give only what the pump lacks, in hours colder than a hard day, so a hard day has none
 * of them. The row's own hours stay as the high end, for frost on the outdoor unit and a house that was let go cold.
 * Where nobody told us that there are strips, their kWh are not counted in any hour.
 */
export function besidePump({ facts, climate }: LoadContext, load: Load): Load {
  if (climate === null) return load;
  const { winter, mild, summer } = load.kwhPerDay;
  const source = formula(
    'strips-in-the-cold',
    [load.runningWatts],
    [{ of: 'heat-pump-by-temperature', ref: 'NREL/TP-5500-56354' }, 'usual-hours-common-practice'],
  );
  const high = (of: typeof winter) => figure({ ...of, low: 0, value: 0, source });
  return {
    ...load,
    ...(facts.told('heat-strips') && { heatsBy: 'strips' }),
    kwhPerDay: { winter: high(winter), mild: high(mild), summer },
  };
}
