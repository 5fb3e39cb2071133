import { figure } from '../../quantity/figure';
import { part } from '../costs';
import { lasts, makeRoute } from '../make-route';
import type { Route } from '../route';
import { transferTime } from '../transfer-time';

/** Getting ready without any source of power: always worth doing, and beside every other route. */
export function preparation(): Route {
  const none = figure({
    value: 0,
    unit: 'h',
    source: { kind: 'formula', is: 'no-power' },
  });
  return makeRoute('preparation', {
    transferTime: transferTime('stays-dark'),
    lasting: lasts(none, false, { code: 'no-power' }),
    parts: [part('preparation')],
    notes: ['things-to-have-ready'],
  });
}
