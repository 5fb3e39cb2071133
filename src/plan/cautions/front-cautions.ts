import type { Home } from '../../home/home';
import type { Finding } from '../../rules/rule';
import type { RuleId } from '../../tables/rules';
import { harmfulSeason } from './harmful-season';
import { outOfSeason } from './out-of-season';

/** Cautions shown on the front page where there are so many; of what is wrong as it is, each one. */
const SHOWN = 3;

/**
 * What kills in an outage, gravest first, by sorts: of what only the route brings one of each sort is shown, so that
 * three say three different things. Our judgement; within a sort the more particular one comes first.
 */
const sorts: readonly (readonly RuleId[])[] = [
  ['gas-smell', 'co-signs', 'hot-panel', 'backfeed-found'],
  ['second-source', 'heart-pump', 'ventilator-bag', 'leaving-point'],
  [
    'apartment-no-engine',
    'porch-carport',
    'engine-too-close',
    'hybrid-starts-itself',
    'co-distance',
    'fixed-engine-exhaust',
  ],
  ['charcoal-indoors', 'oven-heat'],
  ['fuel-in-wrong-place', 'cylinder-hours'],
  ['cold-room', 'heat-room'],
  ['water-and-electricity', 'wildfire-go', 'flood-go', 'flooded-lithium'],
  ['battery-smoke'],
  ['gas-leak-self-start'],
  ['no-backfeed', 'interlock-order'],
  ['co-alarm-first'],
  ['fallen-wire'],
];
const order = sorts.flat();

/**
 * The cautions that matter most to this home: first all it told that is wrong as it is, gravest first (a porch is said once), then by sorts
 * what else the answers and the route advised give cause for, at least one of them; all in the seasons asked for.
 * A caution about something nobody reported is a question to settle and never stands here.
 * @param cautions all of the plan
 * @param ofRoute what the rules say of the route advised alone
 */
export function frontCautions(
  home: Home,
  cautions: readonly Finding[],
  ofRoute: readonly Finding[],
): Finding[] {
  const own = new Set(ofRoute.map((one) => one.id));
  const here = cautions.filter((one) => !one.careful && own.has(one.id) && inSeason(home, one.id));
  const porch = here.some((one) => one.id === 'porch-carport');
  const known = here.filter((one) => !(porch && one.id === 'engine-too-close'));
  const wrong = known.filter((one) => one.wrongAsItIs).sort(byRank);
  const others = known.filter((one) => !wrong.includes(one));
  const ofSorts = sorts.flatMap((ids) =>
    ids.flatMap((id) => others.filter((one) => one.id === id)).slice(0, 1),
  );
  const rest = others.filter((one) => one.severity >= 4);
  const more = [...new Set([...ofSorts, ...rest])];
  return [...wrong, ...more.slice(0, Math.max(1, SHOWN - wrong.length))];
}

/** Gravest first; within one severity as in the list above, what is not in it last. */
function byRank(a: Finding, b: Finding): number {
  const at = ({ id }: Finding) => (order.includes(id) ? order.indexOf(id) : order.length);
  return b.severity - a.severity || at(a) - at(b);
}

/** In a season asked for; a cold room in a cold winter, a hot one in a hot summer. */
function inSeason(home: Home, id: RuleId): boolean {
  if (outOfSeason(home, id)) return false;
  if (id === 'cold-room') return harmfulSeason(home, 'cold');
  return id !== 'heat-room' || harmfulSeason(home, 'heat');
}
