import { loadName } from '../../../home/load-names';
import { type Reading, readingOf } from '../../../plan/ladder-reading';
import type { Plan } from '../../../plan/plan';
import { formatQuantity } from '../../../quantity/format-quantity';
import { bullets } from '../../markdown/bullets';
import { startOrderLine } from './say-electrical';

/** What goes off at which level, and the order in which motors are switched on. */
export function sayLadder(plan: Plan): string[] {
  const order = startOrderLine(plan);
  return [
    '## What goes off, in which order',
    ...howToRead(plan),
    bullets(plan.ladder.map((step) => line(plan, step))),
    ...(order === null ? [] : [order]),
  ];
}

function line(plan: Plan, step: Plan['ladder'][number]): string {
  const names = step.switchOff.map((id) =>
    id === 'house-standby'
      ? `${loadName(plan.home, id)} (pull their plugs)`
      : loadName(plan.home, id),
  );
  const what = names.length > 0 ? names.join(', ') : 'nothing more';
  const at =
    step.atPercent === 100 ? 'From the start' : sayReading(readingOf(plan, step.atPercent));
  return `${at}, switch off: ${what} (${step.why}).${sayGain(step)}`;
}

/** What a rung buys by the likely count and by the careful one, both named. */
export function sayGain({
  gainsHours,
  carefulGainsHours,
}: Pick<Plan['ladder'][number], 'gainsHours' | 'carefulGainsHours'>): string {
  const hours = (gain: number) => formatQuantity(Math.max(1, Math.round(gain)), 'h');
  if (carefulGainsHours === null)
    return gainsHours === null
      ? ''
      : ` That buys about ${hours(gainsHours)} at likely use, next to nothing by the careful count.`;
  return gainsHours === null
    ? ` That buys next to nothing at likely use, about ${hours(carefulGainsHours)} by the careful count.`
    : ` That buys about ${hours(gainsHours)} (careful count ${hours(carefulGainsHours)}).`;
}

/** What is read off, in words. Piped gas has no gauge, so its order goes by strain. */
export function sayReading(reading: Reading): string {
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
}

const left = (gallons: number) => (gallons === 1 ? 'is left' : 'are left');

/** How gallons are read off a tank; empty where there is none to read. */
function howToRead(plan: Plan): string[] {
  return readingOf(plan, 100).of === 'tank'
    ? [
        'Gallons in the tank are its size times what its gauge shows: 50 % on a tank of 500 gal is 250 gal.',
      ]
    : [];
}
