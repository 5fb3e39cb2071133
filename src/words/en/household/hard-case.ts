import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence } from '../list-of';

/** To a tenth where tenths are printed; a larger value is rounded once, in print. */
const tenths = (value: number) => (value < 100 ? Number(value.toFixed(1)) : value);

/** The careful count step by step. */
export const hardCase = {
  about: (route: string) =>
    `The careful count step by step (${inSentence(route)}). On the day, hold what is left against it: with less than this, switch off sooner.`,
  after: 'After',
  served: 'It served',
  sun: 'The sun gave',
  charge: 'Left in the battery',
  fuel: 'Fuel left',
  hours: (hours: number) => formatQuantity(hours, 'h'),
  kwh: (kwh: number) => formatQuantity(tenths(kwh), 'kWh'),
  gallons: (gallons: number) => formatQuantity(tenths(gallons), 'gal'),
};
