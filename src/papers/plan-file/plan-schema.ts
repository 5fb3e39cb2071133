import { z } from 'zod';
import { routeKinds } from '../../kinds/route-kind';
import { PLAN_SCHEMA_VERSION } from '../../plan/plan';
import { electricalSchema } from './electrical-schema';
import { moneySchema } from './money-schema';
import { namedLoadSchema, namedLoadsSchema } from './named-load-schema';
import { rideThroughSchema } from './ride-through-schema';

const figure = z.strictObject({
  value: z.number().describe('Likely value.'),
  low: z.number(),
  high: z.number(),
  unit: z.string(),
  from: z.string().describe('Where it comes from, the source in square brackets.'),
});
const bySeason = z.strictObject({ winter: figure, summer: figure, mild: figure });
const hours = z.array(z.number()).length(24);
const lines = z.array(z.string());
const kind = z.enum(routeKinds);

const load = z.strictObject({
  id: z.string(),
  name: z.string(),
  rank: z.enum(['must keep running', 'good to have', 'can wait']),
  lifeSupport: z.boolean(),
  volts: z.union([z.literal(120), z.literal(240)]),
  running: figure,
  apparent: figure,
  startingCurrent: z.union([figure, z.string()]),
  starting: z.union([figure, z.string()]),
  energy: bySeason,
  shareByHour: hours,
  offInOutage: z.boolean(),
  restsOn: lines.describe('Questions whose answers it rests on.'),
});

const demand = z.strictObject({
  running: figure,
  apparent: figure,
  starting: figure,
  hardestStart: z.union([namedLoadSchema, z.literal('none')]),
  startsTogether: namedLoadsSchema.describe('Loads that start at the hardest moment.'),
  energy: bySeason,
  wattsByHour: z.strictObject({ winter: hours, summer: hours, mild: hours }),
  needs240Volts: z.boolean(),
});

const route = z.strictObject({
  kind,
  title: z.string(),
  verdict: z.enum(['works', 'works-if', 'cannot']),
  cannotBecause: lines,
  notKnownYet: z.boolean().describe('It cannot be said to work only for want of answers.'),
  worksIf: lines,
  carries: namedLoadsSchema,
  leavesOut: z.array(
    namedLoadSchema.extend({
      code: z.string().describe('Why, as a code; `why` says it in words.'),
      why: z.string(),
      must: z.boolean(),
    }),
  ),
  power: z.union([
    z.strictObject({
      continuousWatts: z.number(),
      startVa: z.number(),
      asksRunning: figure,
      asksStarting: figure,
    }),
    z.literal('none'),
  ]),
  nameplateKwh: z.union([z.number(), z.literal('none')]),
  usableKwh: z.union([z.number(), z.literal('none')]),
  solarKw: z.union([z.number(), z.literal('none')]),
  sizeByOdds: z.union([
    z.strictObject({ nineOutagesInTenKwh: z.number(), nineYearsInTenKwh: z.number() }),
    z.literal('not sized by odds'),
  ]),
  fuel: z.union([
    z.strictObject({
      fuel: z.string(),
      perDay: figure,
      atHand: z.union([figure, z.literal('piped')]),
    }),
    z.literal('none'),
  ]),
  gap: z
    .strictObject({
      code: z.string(),
      lowSeconds: z.union([z.number(), z.literal('none')]),
      highSeconds: z.union([z.number(), z.literal('none')]),
      says: z.string(),
    })
    .describe('Time without power when the grid fails; no seconds where no power comes back.'),
  lasts: z.string(),
  lastsHours: z.union([figure, z.literal('no end foreseen')]),
  reachesGoal: z.boolean(),
  cost: figure,
  parts: z.array(z.strictObject({ name: z.string(), cost: figure, year: z.number() })),
  notes: lines,
});

/** The form of a plan file. */
export const planSchema = z.strictObject({
  lampkeeperPlan: z.literal(PLAN_SCHEMA_VERSION),
  schemaVersion: z.literal(PLAN_SCHEMA_VERSION),
  danger: z
    .strictObject({
      told: z.array(z.strictObject({ id: z.string(), says: z.string() })).min(1),
      firstOfAll: lines.min(1).describe('What to do at once, in this order.'),
    })
    .optional()
    .describe('Danger told while the plan was made, the deadliest first.'),
  name: z.string(),
  asOf: z.string(),
  seed: z.number().int().describe('Seed of the drawn weather years.'),
  weatherYears: z.number().int(),
  state: z.enum(['draft', 'complete']),
  draftBecause: lines,
  undecided: z
    .array(z.strictObject({ question: z.string(), says: z.string(), decides: z.string() }))
    .describe('Questions never asked without which nothing is advised.'),
  job: lines.describe('The job of this home in three sentences.'),
  jobTold: z.boolean().describe('The household was asked what must run.'),
  place: z.strictObject({
    basis: z.string(),
    stations: z.string(),
    warnings: lines,
    state: z.string(),
    elevation: figure,
    coldF: z.number(),
    hotF: z.number(),
  }),
  goal: z.strictObject({ hours: figure, seasons: z.array(z.enum(['winter', 'summer', 'mild'])) }),
  lifeSupport: z.enum(['yes', 'no', 'unknown']),
  loads: z.array(load),
  demand: z.strictObject({ mustRun: demand, mustAndGood: demand, everything: demand }),
  billCheck: z.strictObject({
    verdict: z.enum(['not-possible', 'fits', 'loads-over-bill', 'loads-likely-high']),
    says: z.string(),
    bill: figure.optional(),
    loads: figure.optional(),
    season: z.enum(['winter', 'summer', 'mild']).optional(),
  }),
  calibration: z.string().describe('What two or twelve bills say of heating or cooling.'),
  billYear: z
    .strictObject({
      monthsKwh: z.array(z.number()).length(12).describe('As told, January first.'),
      anyWeather: figure,
      withCold: figure,
      withHeat: figure,
      misfit: figure,
      explained: figure,
    })
    .nullable()
    .describe('Twelve bills split by degree days; null where they were not told.'),
  rideThrough: rideThroughSchema,
  money: moneySchema,
  outlook: z.strictObject({
    ordinaryTimes: figure,
    ordinaryHours: figure,
    majorTimes: figure,
    majorHours: figure,
    chanceOfGoalInTenYears: figure,
    evidence: z.literal('weak'),
  }),
  advised: z.strictObject({ route: kind, because: z.string() }),
  beside: z.array(kind),
  wholeJob: z.string(),
  routes: z.array(route),
  willNotDo: lines,
  cautions: z.array(
    z.strictObject({
      id: z.string(),
      severity: z.number().int().min(1).max(5),
      says: z.string(),
      who: lines,
      because: z.string(),
      figures: z
        .array(z.strictObject({ load: z.string(), at: z.enum(['start', 'running']), figure }))
        .describe('Figures of this home behind the caution.'),
      careful: z.boolean().describe('Shown because an answer is missing, not because of one.'),
      asks: z.string().describe('The open question that would settle it.'),
      proof: z.string(),
      cite: z.string(),
    }),
  ),
  electricianFor: z
    .enum(['route', 'home', 'nothing'])
    .describe('What a licensed electrician is needed for.'),
  electrician: lines,
  electrical: electricalSchema,
  addOns: z
    .array(
      z.strictObject({
        name: z.string(),
        because: z.string(),
        usdLow: z.number(),
        usdLikely: z.number(),
        usdHigh: z.number(),
        year: z.number().int(),
        cost: z.string(),
      }),
    )
    .describe('Worth having beside the route advised; not in its cost.'),
  fuelToStore: z.string(),
  ladder: z.array(
    z.strictObject({
      atPercent: z
        .number()
        .nullable()
        .describe('Of the store that is left; 100 from the start, null on piped gas.'),
      atGallons: z
        .number()
        .nullable()
        .describe('Gallons left in cans or in the tank; null where no fuel is kept.'),
      switchOff: namedLoadsSchema,
      savesWatts: z.number(),
      gainsHours: z.union([z.number(), z.literal('not counted')]),
      why: z.string(),
    }),
  ),
  lifeFirst: z
    .union([
      z.strictObject({
        told: z.boolean().describe('Told; false: nobody said, so the careful branch.'),
        callToday: lines.describe('Who has not been told of the device.'),
        ownBattery: z.strictObject({
          toldHours: z.union([z.number(), z.literal('not known')]),
          tested: z.boolean(),
          countedHours: z.number(),
        }),
        secondWays: lines,
        tripHours: z.number(),
        tripTold: z.boolean(),
        roads: z.enum(['more', 'one', 'not-known']).describe('Roads out of here.'),
        leaveAtHours: z.number().describe('Hours that must still be carried when leaving.'),
        leaveAtOnce: z.boolean().describe('Leave when the power fails, or before a storm.'),
      }),
      z.literal('nobody'),
    ])
    .describe('What comes before any purchase where life hangs on a device.'),
  healthFirst: z
    .strictObject({
      carried: z.array(z.string()),
      missed: z.array(z.string()),
      covered: z
        .strictObject({
          likelyHours: z.number(),
          carefulHours: z.number(),
          likelyShare: z.number().min(0).max(1),
          carefulShare: z.number().min(0).max(1),
        })
        .nullable(),
    })
    .nullable()
    .describe('How long the health devices alone are covered; null where none was named.'),
  comfortLost: z
    .strictObject({ heat: lines, cool: lines })
    .describe('Loads whose heat or cooling the route advised does not carry, where that harms.'),
  leavingPoint: lines,
  toFindOut: z.array(
    z.strictObject({
      question: z.string(),
      says: z.string(),
      how: z.string(),
      safety: z.boolean(),
      changes: z.number(),
    }),
  ),
  assumptions: z.array(
    z.strictObject({
      question: z.string(),
      says: z.string(),
      assumed: z.string(),
      because: z.string(),
      asked: z.boolean(),
    }),
  ),
  nextSteps: z.array(
    z.strictObject({
      id: z.string().describe('What the step is about.'),
      what: z.string(),
      who: z.string(),
    }),
  ),
  sources: lines,
});

/** What a reader of an older file has to know. */
const VERSIONS =
  'Version 2: a load is referred to by its id and name where version 1 had its name alone (carries, leavesOut, switchOff, hardestStart, startsTogether, starting, highEnd), what is left out and the gap have a code beside their words, and the gap has its seconds.';

/** The same as JSON Schema, for editors. */
export function planJsonSchema(): unknown {
  return z.toJSONSchema(planSchema.describe(VERSIONS), { target: 'draft-2020-12' });
}
