import * as z from 'zod';
import { isSource } from '../../kinds/ask-traits';
import { routeTitles } from '../../kinds/route-title';
import { traitsOf } from '../../kinds/route-traits';
import type {
  DevicesFact,
  Lasts,
  LoadFact,
  OddsFact,
  PlanFacts,
} from '../../plan/changes/plan-facts';
import { kind, season } from './shared-schema';

const figure = z.object({ value: z.number(), low: z.number(), high: z.number() });
const numberOrNone = z.union([z.number(), z.literal('none')]);

/** Loads by id and name from form 2 on, by name alone in form 1. */
const namedOrName = z.union([z.string(), z.object({ id: z.string(), name: z.string() })]);

const route = z.object({
  kind,
  /** From form 5 on. */
  called: z.enum(routeTitles).optional(),
  title: z.string(),
  carries: z.array(namedOrName),
  leavesOut: z.array(z.object({ id: z.string().optional(), name: z.string(), must: z.boolean() })),
  power: z.union([z.object({ continuousWatts: z.number() }), z.literal('none')]),
  usableKwh: numberOrNone,
  solarKw: numberOrNone,
  fuel: z.unknown(),
  lastsHours: z.union([figure, z.literal('no end foreseen')]),
  reachesGoal: z.boolean(),
  cost: figure,
});

/** What of a plan file of any form is laid beside a new plan. Everything else in it is left unread. */
const compared = z.object({
  asOf: z.string(),
  weatherYears: z.number().optional(),
  undecided: z.array(z.unknown()).optional(),
  goal: z.object({ hours: figure, seasons: z.array(season).min(1) }),
  loads: z.array(z.object({ id: z.string(), name: z.string(), rank: z.string() })),
  advised: z.object({ route: kind }),
  list: z
    .array(
      z.object({
        advised: z.boolean(),
        way: z.enum(['usual', 'thrifty']).optional(),
        storedGal: z.union([z.number(), z.string()]),
        lastsHours: z.union([z.object({ likely: z.number(), careful: z.number() }), z.string()]),
        reachesGoal: z.boolean(),
      }),
    )
    .optional(),
  routes: z.array(route),
  rideThrough: z
    .object({
      season,
      goalHours: z.number(),
      routes: z.array(
        z.object({
          kind,
          oddsMustRun: z.array(z.object({ hours: z.number(), season: z.number() })),
          onceCansAreFilled: z.union([z.object({ odds: z.number() }), z.string()]).optional(),
        }),
      ),
    })
    .optional(),
  lifeSupport: z.string().optional(),
  healthFirst: z
    .object({
      covered: z.object({ likelyHours: z.number(), carefulHours: z.number() }).nullable(),
    })
    .nullable()
    .optional(),
  cautions: z.array(
    z.object({
      id: z.string(),
      severity: z.union([z.literal(1), z.literal(2), z.literal(3), z.literal(4), z.literal(5)]),
      careful: z.boolean(),
    }),
  ),
});

type Compared = z.infer<typeof compared>;
type RouteInFile = z.infer<typeof route>;

/** The facts of a plan file, of this form or an earlier one, and the day it is of; null where it is no whole plan of ours. */
export function planInFile(
  data: unknown,
): { readonly asOf: string; readonly facts: PlanFacts } | null {
  const read = compared.safeParse(data);
  if (!read.success) return null;
  const plan = read.data;
  const advised = plan.routes.find((one) => one.kind === plan.advised.route);
  return advised === undefined ? null : { asOf: plan.asOf, facts: factsOf(plan, advised) };
}

function factsOf(plan: Compared, advised: RouteInFile): PlanFacts {
  const source = isSource(traitsOf[advised.kind]);
  return {
    drawnYears: plan.weatherYears ?? 100,
    undecided: (plan.undecided ?? []).length > 0,
    route: {
      kind: advised.kind,
      called: advised.called ?? null,
      title: advised.title,
      isSource: source,
      thriftily: thriftily(plan),
    },
    size: {
      usableKwh: orNull(advised.usableKwh),
      watts: generatorWatts(advised),
      solarKw: orNull(advised.solarKw),
      step: 0,
    },
    usd: { low: advised.cost.low, likely: advised.cost.value, high: advised.cost.high },
    goalHours: Math.round(plan.goal.hours.value),
    season: plan.rideThrough?.season ?? plan.goal.seasons[0]!,
    lasts: source ? lastsOf(plan, advised) : { code: 'no-power' },
    reachesGoal: advisedLine(plan)?.reachesGoal ?? advised.reachesGoal,
    odds: oddsOf(plan, advised),
    devices: devicesOf(plan),
    onlyBridge: plan.lifeSupport !== undefined && plan.lifeSupport !== 'no',
    refill: null,
    leavesOut: leftOut(plan, advised),
    cautions: plan.cautions,
  };
}

const orNull = (value: number | 'none') => (value === 'none' ? null : value);

/** Power is that of a generator where fuel is burned. */
function generatorWatts({ fuel, power }: RouteInFile): number | null {
  return fuel === 'none' || power === 'none' ? null : power.continuousWatts;
}

function thriftily(plan: Compared): boolean | null {
  const way = advisedLine(plan)?.way;
  return way === undefined ? null : way === 'thrifty';
}

const advisedLine = ({ list }: Compared) => list?.find(({ advised }) => advised);
const rideOf = ({ rideThrough }: Compared, { kind: own }: RouteInFile) =>
  rideThrough?.routes.find((one) => one.kind === own);

function lastsOf(plan: Compared, advised: RouteInFile): Lasts {
  // The file does not tell; the plan it is laid beside has as many years.
  const overDrawnYears = true;
  const { lastsHours: hours } = advised;
  if (advised.carries.length === 0) return { code: 'no-power' };
  if (typeof hours === 'string') return { code: 'no-end-foreseen' };
  const today = { low: hours.low, likely: hours.value, high: hours.high };
  const line = advisedLine(plan);
  const filled = typeof rideOf(plan, advised)?.onceCansAreFilled === 'object';
  if (!filled || typeof line?.storedGal !== 'number' || typeof line.lastsHours === 'string') {
    return { code: 'hours', today, stored: null, overDrawnYears };
  }
  const { likely, careful } = line.lastsHours;
  const then = { low: careful, likely, high: likely };
  return { code: 'hours', today, stored: { gallons: line.storedGal, hours: then }, overDrawnYears };
}

function devicesOf({ healthFirst }: Compared): DevicesFact | 'none-carried' | null {
  if (healthFirst === null || healthFirst === undefined) return null;
  return healthFirst.covered ?? 'none-carried';
}

function oddsOf(plan: Compared, advised: RouteInFile): OddsFact | null {
  const ride = rideOf(plan, advised);
  const goal = ride?.oddsMustRun.find(({ hours }) => hours === plan.rideThrough?.goalHours);
  if (goal === undefined) return null;
  const filled = ride?.onceCansAreFilled;
  return { today: goal.season, stored: typeof filled === 'object' ? filled.odds : null };
}

/** Without a source nothing that must run is carried. */
function leftOut(plan: Compared, { carries, leavesOut }: RouteInFile): LoadFact[] {
  if (carries.length === 0) {
    return plan.loads
      .filter(({ rank }) => rank === 'must keep running')
      .map(({ id, name }) => ({ id, name }));
  }
  // In form 1 a route has the names of its loads alone; their ids stand in the list of loads.
  const ids = new Map(plan.loads.map(({ id, name }) => [name, id]));
  return leavesOut
    .filter(({ must }) => must)
    .map(({ id, name }) => ({ id: id ?? ids.get(name) ?? name, name }));
}
