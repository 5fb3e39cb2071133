import { findings } from '../../rules/find';
import type { Finding } from '../../rules/rule';
import type { Plan } from '../plan';

/** Cautions shown on the front page. */
const SHOWN = 3;

/**
 * What kills in an outage, gravest first; one caution of each sort, so that three say three different things.
 * Our judgement; within a sort the more particular one comes first.
 */
const sorts: readonly (readonly string[])[] = [
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
  ['cold-room', 'heat-room'],
  ['water-and-electricity', 'flood-go', 'flooded-lithium'],
  ['oven-heat', 'charcoal-indoors'],
  ['battery-smoke'],
  ['gas-leak-self-start'],
  ['no-backfeed', 'interlock-order'],
  ['co-alarm-first'],
];

/**
 * The three cautions that matter most to this home with the route advised. In a complete plan what was answered comes
 * before what was not; a draft has too little of the first.
 */
export function frontCautions(plan: Plan): Finding[] {
  const own = new Set(findings(plan.home, [plan.advice.route.kind]).map((one) => one.id));
  const at = (id: string) => plan.cautions.find((one) => one.id === id && own.has(id));
  const ofSorts = sorts.flatMap((ids) => ids.map(at).find((one) => one !== undefined) ?? []);
  const late = (one: Finding) => plan.state === 'complete' && one.careful;
  const ordered = [...ofSorts.filter((one) => !late(one)), ...ofSorts.filter(late)];
  const rest = plan.cautions.filter((one) => own.has(one.id) && one.severity >= 4);
  return [...new Set([...ordered, ...rest])].slice(0, SHOWN);
}
