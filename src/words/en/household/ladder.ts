import type { LadderStep } from '../../../plan/ladder';
import type { Reading } from '../../../plan/ladder-reading';
import { formatQuantity } from '../../../quantity/format-quantity';

type Gains = Pick<LadderStep, 'gainsHours' | 'carefulGainsHours'>;

/** The order in which things go off. */
export const ladder = {
  title: 'What goes off, in which order',
  fromTheStart: 'From the start',
  pullPlugs: (name: string) => `${name} (pull their plugs)`,
  nothingMore: 'nothing more',
  /** What is read off, in words. Piped gas has no gauge, so its order goes by strain. */
  reading(reading: Reading): string {
    switch (reading.of) {
      case 'charge':
        return `At ${reading.percent} % of charge`;
      case 'vehicle':
        return `At ${reading.percent} % of the vehicle's charge or fuel`;
      case 'cans':
        return `When ${formatQuantity(reading.gallons, 'gal')} of ${reading.fuel} ${left(reading.gallons)}`;
      case 'tank':
        return `When ${formatQuantity(reading.gallons, 'gal')} ${left(reading.gallons)} in the tank`;
      case 'strain':
        return 'If the gas gets weak or the generator labors, next';
    }
  },
  switchOff: (at: string, what: string, why: string) => `${at}, switch off: ${what} (${why}).`,
  /** The rung at which a home begins to live thriftily. */
  thriftily: (at: string, off: readonly string[], less: readonly string[], why: string) =>
    `${at}, ${[off.length > 0 ? `switch off: ${off.join(', ')}` : '', less.length > 0 ? `run in turns or turn down: ${less.join(', ')}` : ''].filter((part) => part !== '').join('; ')} (${why}).`,
  /** Behind a name in a short list. */
  less: (name: string) => `${name} (less)`,
  /** What a rung buys by the likely count and by the careful one, both named, with a space before it. */
  buys({ gainsHours, carefulGainsHours }: Gains): string {
    if (carefulGainsHours === null)
      return gainsHours === null
        ? ''
        : ` That buys about ${hours(gainsHours)} at likely use, next to nothing by the careful count.`;
    return gainsHours === null
      ? ` That buys next to nothing at likely use, about ${hours(carefulGainsHours)} by the careful count.`
      : ` That buys about ${hours(gainsHours)} (careful count ${hours(carefulGainsHours)}).`;
  },
  readTank:
    'Gallons in the tank are its size times what its gauge shows: 50 % on a tank of 500 gal is 250 gal.',
  startOrder: (order: readonly string[]) =>
    `Switch motors on one at a time, in this order: ${order.join(', ')}.`,
  /** With a space before it. */
  neverTogether: (pairs: readonly (readonly string[])[]) =>
    ` Never at the same moment: ${pairs.map((pair) => pair.join(' and ')).join('; ')}.`,
};

const hours = (gain: number) => formatQuantity(Math.max(1, Math.round(gain)), 'h');
const left = (gallons: number) => (gallons === 1 ? 'is left' : 'are left');
