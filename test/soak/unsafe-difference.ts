import type { Home } from '../../src/home/home';
import { leaveAt } from '../../src/home/people/leave-at';
import type { PlanFacts } from '../../src/plan/changes/plan-facts';
import { type LeavingLine, leavingPoint } from '../../src/plan/leaving-point';
import type { Route } from '../../src/routes/route';
import { findings } from '../../src/rules/find';
import type { RuleId } from '../../src/tables/rules';

/** A home on some of its answers, or on all: what is advised, and what can be had. */
export interface Advised {
  readonly home: Home;
  readonly routes: readonly Route[];
  readonly facts: PlanFacts;
}

/** Hours beside each other come from five drawn years and are rounded. */
const MORE_HOPEFUL = 1.25;
/** The same equipment, as far as sizes of a list go. */
const SAME_SIZE = 1.05;

/** How a plan on some answers leads where the plan on all of them never would; empty when it does not. */
export function unsafeDifference(told: Advised, whole: Advised): string[] {
  return [
    ...closedRoute(told, whole),
    ...missingCautions(told, whole),
    ...hopefulDevices(told.facts, whole.facts),
    ...laterLeaving(told.home, whole.home),
  ];
}

/** What is advised is what the whole file says cannot be used here. */
function closedRoute({ facts }: Advised, { routes }: Advised): string[] {
  const { kind } = facts.route;
  const verdict = routes.find((one) => one.kind === kind)?.verdict;
  return verdict === 'cannot' ? [`${kind} is advised, and cannot be used here`] : [];
}

/** What can kill on the route advised, which the whole file tells of. */
function missingCautions({ facts }: Advised, { home }: Advised): string[] {
  const said = new Set(facts.cautions.map(({ id }) => id));
  const told = (id: RuleId) => said.has(id) || said.has(inGeneral[id] ?? id);
  return findings(home, [facts.route.kind])
    .filter(({ id, severity }) => severity === 5 && !told(id) && !isIdle(id, home))
    .map(({ id }) => `caution ${id} is missing`);
}

/** What is told of a danger where nobody told of this home's own. */
const inGeneral: Partial<Record<RuleId, RuleId>> = {
  'backfeed-found': 'no-backfeed',
  'engine-too-close': 'co-distance',
};

/** How to work a switch that nothing feeds. */
const isIdle = (id: RuleId, { facts }: Home) =>
  id === 'interlock-order' && !facts.has('own-sources', 'engine-portable', 'engine-standby');

/** The same equipment, or less, and as much used, is said to carry the health devices for longer. */
function hopefulDevices(told: PlanFacts, whole: PlanFacts): string[] {
  if (told.route.kind !== whole.route.kind || larger(told, whole)) return [];
  // Living thriftily the generator runs in the hours of use alone, and the plan says so.
  if (told.route.thriftily && !whole.route.thriftily) return [];
  const hours = told.devices !== null && told.devices !== 'none-carried' ? told.devices : null;
  if (hours === null) return [];
  const then = whole.devices === null || whole.devices === 'none-carried' ? null : whole.devices;
  const most = (then?.carefulHours ?? 0) * MORE_HOPEFUL + 1;
  return hours.carefulHours > most
    ? [`devices for ${hours.carefulHours} h, with the whole file ${then?.carefulHours ?? 0} h`]
    : [];
}

function larger(a: PlanFacts, b: PlanFacts): boolean {
  const more = (one: number | null, other: number | null) => (one ?? 0) > (other ?? 0) * SAME_SIZE;
  return more(a.size.usableKwh, b.size.usableKwh) || more(a.size.watts, b.size.watts);
}

/** Lines on when to leave that only the whole file has, and a later hour to leave with a device. */
function laterLeaving(told: Home, whole: Home): string[] {
  const has = new Set(leavingPoint(told).map(({ code }) => code));
  const missing = leavingPoint(whole)
    .map(({ code }) => code)
    .filter((code) => forLife(code) && !has.has(code))
    .map((code) => `leaving point ${code} is missing`);
  const [said, must] = [leaveAt(told.facts).hours, leaveAt(whole.facts).hours];
  const later = whole.lifeSupport !== 'no' && said < must;
  return [
    ...missing,
    ...(later ? [`leave with ${said} h in hand, with the whole file ${must}`] : []),
  ];
}

/** Animals and a better place to go are for comfort; a plan without known people at risk has its own line on the room. */
function forLife(code: LeavingLine['code']): boolean {
  return code === 'device' || code === 'cold' || code === 'heat' || code === 'one-road';
}
