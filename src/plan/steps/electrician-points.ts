import type { Home } from '../../home/home';
import type { LoadId } from '../../home/loads/load-id';
import type { RouteTitle } from '../../kinds/route-title';
import type { Route } from '../../routes/route';
import { hasWiringToDo } from '../../routes/wiring-to-do';
import { type Finding, isElectricians } from '../../rules/rule';
import { type RuleId, ruleOf } from '../../tables/rules';
import { givesWatts } from '../electrical/high-end';
import type { Range } from '../electrical/scope-points';

/** What a licensed electrician is needed for in this plan. */
export type ElectricianFor = 'route' | 'home' | 'nothing';

/** A point for the electrician; `words` says it. */
export type ElectricianPoint =
  | {
      readonly code:
        | 'plugs-only' // the route needs no wiring, but the home needs an electrician
        | 'no-work'
        | 'no-work-yet' // answers that are missing may still call for one
        | 'theirs-to-decide';
    }
  | { readonly code: 'panel-and-wires'; readonly called: RouteTitle }
  /** What must keep running and what is good to have, apart: the counts of the job and of the route differ by it. */
  | {
      readonly code: 'circuits';
      readonly must: readonly LoadId[];
      readonly more: readonly LoadId[];
    }
  /** `labelWatts` is the size, `givesWatts` what is left of it at this height and heat. */
  | {
      readonly code: 'source';
      readonly watts: Range;
      readonly startVa: Range;
      readonly softStarter: boolean;
      readonly labelWatts: number;
      readonly givesWatts: number;
    }
  | { readonly code: 'storage'; readonly kwh: number }
  | {
      readonly code: 'service';
      readonly mainAmps: number | null;
      readonly busAmps: number | null;
      readonly spaces: number | null;
    }
  /** A caution, whole or by its first sentence alone. */
  | {
      readonly code: 'caution';
      readonly id: RuleId;
      readonly careful: boolean;
      readonly whole: boolean;
    };

/** What can injure or kill; what merely keeps the backup from working stands under the cautions and in figures. */
const CAN_INJURE = 4;

/** The points where a licensed electrician is required, with what the quote must meet; `cautions` of this route alone. */
export function electricianPoints(
  home: Home,
  route: Route,
  cautions: readonly Finding[],
): ElectricianPoint[] {
  const theirs = cautions.filter(
    (one) => isElectricians(one) && one.severity >= CAN_INJURE && !forbids.includes(one.id),
  );
  const needed = electricianFor(route, cautions);
  if (needed === 'route') return [...quotePoints(home, route), ...theirs.map(pointOf)];
  if (needed === 'home') return [{ code: 'plugs-only' }, ...theirs.map(pointOf)];
  // What only forbids asks for nobody; it stands under the cautions.
  const work = theirs.filter(({ id }) => !neverWork.includes(id));
  return [{ code: work.length > 0 ? 'no-work-yet' : 'no-work' }, ...work.map(pointOf)];
}

const pointOf = ({ id, careful }: Finding): ElectricianPoint => ({
  code: 'caution',
  id,
  careful,
  whole: ruleOf(id).whole === true,
});

/** By the route, by what the household told of its home (`cautions` of this route alone), or for nothing. */
export function electricianFor(route: Route, cautions: readonly Finding[]): ElectricianFor {
  if (hasWiringToDo(route)) return 'route';
  const work = cautions.some(
    (one) =>
      !one.careful &&
      isElectricians(one) &&
      one.severity >= CAN_INJURE &&
      !neverWork.includes(one.id),
  );
  return work ? 'home' : 'nothing';
}

/** It forbids what nobody may do, an electrician neither; it stands under the cautions. */
const forbids: readonly RuleId[] = ['no-backfeed'];
/** Cautions that forbid something rather than ask for work. */
const neverWork: readonly RuleId[] = ['no-backfeed', 'vehicle-house-ok'];

function quotePoints(home: Home, route: Route): ElectricianPoint[] {
  const { power, usableKwh } = route;
  const source: ElectricianPoint[] = power === null ? [] : [sourcePoint(route, power)];
  const storage: ElectricianPoint[] =
    usableKwh === null ? [] : [{ code: 'storage', kwh: usableKwh }];
  return [
    { code: 'panel-and-wires', called: route.called },
    circuits(home, route),
    ...source,
    ...storage,
    service(home),
    { code: 'theirs-to-decide' },
  ];
}

function circuits(home: Home, route: Route): ElectricianPoint {
  const ids = new Set(home.loads.filter((l) => l.rank === 'must').map((l) => l.id));
  return {
    code: 'circuits',
    must: route.carries.filter((id) => ids.has(id)),
    more: route.carries.filter((id) => !ids.has(id)),
  };
}

function sourcePoint(route: Route, power: NonNullable<Route['power']>): ElectricianPoint {
  const { runningWatts: w, startDemandVa: va } = power;
  return {
    code: 'source',
    watts: { low: w.low, value: w.value, high: w.high },
    startVa: { low: va.low, value: va.value, high: va.high },
    softStarter: route.parts.some((part) => part.equipmentClass === 'soft-starter'),
    labelWatts: power.continuousWatts,
    givesWatts: givesWatts(route),
  };
}

function service({ facts }: Home): ElectricianPoint {
  return {
    code: 'service',
    mainAmps: facts.number('main-amps'),
    busAmps: facts.number('panel-bus'),
    spaces: facts.told('panel-spaces') ? facts.number('panel-spaces') : null,
  };
}
