import type { LoadId } from '../../home/loads/load-id';
import type { HighEndShortfall } from '../../plan/electrical/high-end';
import { formatQuantity } from '../../quantity/format-quantity';
import { inSentence, listOf } from './list-of';
import { loadNames } from './load-names';
import type { Named } from './named';

/** The need at the high end, what the route gives, and what to do about it, in a sentence. */
export function sayHighEnd(home: Named, shortfall: HighEndShortfall): string {
  const { what, unit } = shortfall;
  const [asks, gives] = [
    formatQuantity(shortfall.asks, unit),
    formatQuantity(shortfall.gives, unit),
  ];
  const need =
    what === 'running'
      ? `With everything it carries on at once, at the high end, the need is ${asks}; it gives ${gives}`
      : `The hardest start at the high end is ${asks}; it lends ${gives} for a moment`;
  const then = shortfall.byInverter
    ? 'An inverter shuts off above that'
    : 'A generator sags or trips above that';
  return `${need}. ${then}, so ${remedy(home, [shortfall])}.`;
}

/** "measure the lights and the furnace, or read their labels; until then switch the microwave oven off first". */
export function remedy(home: Named, shortfalls: readonly HighEndShortfall[]): string {
  const the = (ids: readonly LoadId[]) =>
    listOf(loadNames(home, ids).map((name) => `the ${inSentence(name)}`));
  const narrow = shortfalls
    .filter(({ measure }) => measure.length > 0)
    .map(({ what, measure }) =>
      what === 'running'
        ? `measure ${the(measure)}, or read their labels`
        : `read the starting amps on the ${measure.length === 1 ? 'label' : 'labels'} of ${the(measure)}`,
    );
  const off = [...new Set(shortfalls.flatMap(({ offFirst }) => offFirst))];
  const then = shortfalls.some(({ offFirst }) => offFirst.length === 0)
    ? 'if they are at the high end, ask for the next larger size'
    : `until then switch ${the(off)} off first`;
  return [...narrow, then].join('; ');
}
