import type { Advice } from '../../advice/advice';
import type { Home } from '../../home/home';
import { findingOf, findings } from '../../rules/find';
import type { Finding } from '../../rules/rule';
import { ruleOf } from '../../tables/rules';
import type { ComfortLost } from '../ladder/comfort-lost';

/** What the rules say of the route advised and of a part of it that is bought first, and of the others what can kill or decides whether they can be had at all. */
export function cautionsFor(
  home: Home,
  advice: Pick<Advice, 'route' | 'beside'> & Partial<Pick<Advice, 'firstBuy'>>,
  lost: Pick<ComfortLost, 'heat'>,
): Finding[] {
  const first = advice.firstBuy?.part?.kind;
  const own = findings(home, [advice.route.kind, ...(first === undefined ? [] : [first])]);
  const others = findings(
    home,
    advice.beside.map((route) => route.kind),
  );
  const more = others.filter(
    ({ id, severity }) =>
      (severity === 5 || ruleOf(id).beside === true) && own.every((one) => one.id !== id),
  );
  const all = [...own, ...more];
  if (lost.heat.length > 0 && all.every((one) => one.id !== 'heat-off'))
    all.push(findingOf('heat-off', 'plan-not-carry-heat'));
  return all.sort((a, b) => b.severity - a.severity);
}
