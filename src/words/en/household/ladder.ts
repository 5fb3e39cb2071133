import type { LoadId } from '../../../home/loads/load-id';
import type { LadderStep, WhyOff } from '../../../plan/ladder/ladder';
import type { Reading } from '../../../plan/ladder/ladder-reading';
import { formatQuantity } from '../../../quantity/format-quantity';
import { listOf } from '../list-of';

const whys: Readonly<Record<Exclude<WhyOff['code'], 'by-need' | 'leaving'>, string>> = {
  'from-the-start': 'off from the first minute, at its breaker or plug',
  'no-source': 'at its breaker or plug, so that nothing starts by itself when the power comes back',
  'good-to-have': 'good to have, not needed',
  thrifty: 'live thriftily, see "Need less first"',
  comfort: 'comfort: keep to one room and one light a person',
};

function staysOn(life: readonly string[], left: readonly string[]): string {
  if (life.length > 0) return `only ${life.join(' and ')} stays on`;
  const names = left.map((name) => name.toLowerCase());
  return names.length > 0 ? `what is left is for ${listOf(names)}` : 'nothing is left on';
}

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
  /** Why a rung is there; names are those of the loads. */
  why(why: WhyOff, nameOf: (id: LoadId) => string): string {
    switch (why.code) {
      case 'by-need':
        return why.fridge
          ? 'run only as needed: the refrigerator to stay at 40 °F or below by thermometer, pumps at set times'
          : 'run only as needed, at set times';
      case 'leaving':
        return `${staysOn(why.life.map(nameOf), why.left.map(nameOf))}: you should already be leaving`;
      default:
        return whys[why.code];
    }
  },
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
