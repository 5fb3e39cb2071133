import type { NeighborStep, OtherUse } from '../../../plan/ride-through/ride-through';
import { formatQuantity } from '../../../quantity/format-quantity';

/** "a larger battery of 15 kWh". */
export function sayNeighbor(step: NeighborStep): string {
  const sized = step.larger ? 'a larger' : 'a smaller';
  const amount = step.larger ? 'more' : 'less';
  switch (step.code) {
    case 'battery':
    case 'pack':
      return `${sized} ${step.code} of ${formatQuantity(step.kwh, 'kWh')}`;
    case 'generator':
      return `${sized} generator of ${formatQuantity(step.kw, 'kW')}`;
    case 'solar':
      return `${amount} solar, ${formatQuantity(step.kw, 'kW')}`;
    case 'fuel':
      return `${amount} fuel, ${formatQuantity(step.gallons, 'gal')} of ${step.fuel}`;
  }
}

/** "with as much fuel again every 2 days, which you call likely". */
export function sayOtherUse(use: OtherUse): string {
  switch (use.code) {
    case 'refilled':
      return `with as much fuel again every ${formatQuantity(use.everyHours, 'h')}, which you call ${use.sure ? 'sure' : 'likely'}`;
    case 'vehicle-stays-home':
      return 'if it stays at home through the outage';
    case 'vehicle-charged-full':
      return 'if it was charged full before the storm and stays at home';
    case 'switched-off-in-order':
      return 'with things switched off in the order below, for what stays on to the end';
  }
}
