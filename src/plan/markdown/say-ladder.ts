import { formatQuantity } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import { startOrderLine } from '../electrical/say-electrical';
import type { Plan } from '../plan';
import { bullets } from './bullets';

/** What goes off at which level, and the order in which motors are switched on. */
export function sayLadder(plan: Plan): string[] {
  const order = startOrderLine(plan);
  return [
    '## What goes off, in which order',
    bullets(plan.ladder.map((step) => line(plan, step))),
    ...(order === null ? [] : [order]),
  ];
}

function line({ home, advice: { route } }: Plan, step: Plan['ladder'][number]): string {
  const always = home.loads.find((load) => load.id === 'house-standby')?.name;
  const names = step.switchOff.map((name) =>
    name === always ? `${name} (pull their plugs)` : name,
  );
  const what = names.length > 0 ? names.join(', ') : 'nothing more';
  const at = step.atPercent === 100 ? 'From the start' : levelOf(route, step.atPercent);
  const gain =
    step.gainsHours === null
      ? ''
      : ` That buys about ${formatQuantity(Math.max(1, Math.round(step.gainsHours)), 'h')}.`;
  return `${at}, switch off: ${what} (${step.why}).${gain}`;
}

/** What is read off: a gauge of charge, of fuel, or both. Piped gas has no gauge, so its order goes by strain. */
export function levelOf({ usableKwh, fuel }: Route, percent: number): string {
  if (usableKwh === null && fuel !== null && fuel.atHand === null) {
    return 'If the gas gets weak or the generator labors, next';
  }
  const stores = [
    ...(usableKwh === null ? [] : ['charge']),
    ...(fuel === null || fuel.atHand === null ? [] : ['fuel']),
  ];
  return `At ${percent} % of ${stores.length > 0 ? stores.join(' or ') : 'charge or fuel'}`;
}
