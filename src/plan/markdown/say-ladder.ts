import { formatQuantity } from '../../quantity/format-quantity';
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

function line({ home }: Plan, step: Plan['ladder'][number]): string {
  const always = home.loads.find((load) => load.id === 'house-standby')?.name;
  const names = step.switchOff.map((name) =>
    name === always ? `${name} (pull their plugs)` : name,
  );
  const what = names.length > 0 ? names.join(', ') : 'nothing more';
  const at = step.atPercent === 100 ? 'From the start' : `At ${step.atPercent} % of charge or fuel`;
  const gain =
    step.gainsHours === null
      ? ''
      : ` That buys about ${formatQuantity(Math.max(1, Math.round(step.gainsHours)), 'h')}.`;
  return `${at}, switch off: ${what} (${step.why}).${gain}`;
}
