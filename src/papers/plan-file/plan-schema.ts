import * as z from 'zod';
import { languages } from '../../words/language';
import { billCheck, billYear } from './bill-schema';
import { caution } from './caution-schema';
import { electricalSchema, toSettle } from './electrical-schema';
import { job } from './job-schema';
import { ladderStep } from './ladder-schema';
import { comfortLost, healthFirst, lifeFirst } from './life-schema';
import { firstBuySchema, listLine, waysOnSchema } from './list-schema';
import { demand, load } from './load-schema';
import { moneySchema } from './money-schema';
import { PLAN_FILE_VERSION } from './plan-file-version';
import { possibleIf } from './possible-if-schema';
import { rideThroughSchema } from './ride-through-schema';
import { route } from './route-schema';
import { figure, kind, lines, said, season } from './shared-schema';
import { addOn, fuelToStore, nextStep } from './step-schema';
import { whatIsThere } from './there-schema';
import { waysOfLiving } from './ways-schema';

/** The form of a plan file, and the one place where it is written. */
export const planSchema = z.strictObject({
  lampkeeperPlan: z.literal(PLAN_FILE_VERSION),
  schemaVersion: z.literal(PLAN_FILE_VERSION),
  language: z
    .enum(languages)
    .describe('Of the words; codes and ids are the same in every language.'),
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
  draftBecause: z.array(said),
  undecided: z
    .array(z.strictObject({ question: z.string(), says: z.string(), decides: z.string() }))
    .describe('Questions never asked without which nothing is advised.'),
  job,
  jobTold: z.boolean().describe('The household was asked what must run.'),
  place: z.strictObject({
    basis: said,
    stations: z.string(),
    warnings: z.array(said),
    state: z.string(),
    elevation: figure,
    coldF: z.number(),
    hotF: z.number(),
  }),
  goal: z.strictObject({ hours: figure, seasons: z.array(season) }),
  lifeSupport: z.enum(['yes', 'no', 'unknown']),
  loads: z.array(load),
  demand: z.strictObject({ mustRun: demand, mustAndGood: demand, everything: demand }),
  billCheck,
  calibration: z
    .union([said, z.literal('not from bills')])
    .describe('What two or twelve bills say of heating or cooling.'),
  billYear,
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
  advised: z.strictObject({
    route: kind,
    reason: z.string().describe('Why, as a code.'),
    because: z.string(),
    firstBuy: firstBuySchema,
  }),
  list: z
    .array(listLine)
    .max(8)
    .describe('What each dollar buys: what nothing beats in money and in odds, from $0 up.'),
  waysOn: waysOnSchema,
  beside: z.array(kind),
  wholeJob: z.string(),
  routes: z.array(route),
  possibleIf: z
    .array(possibleIf)
    .describe('Closed by what could change, as if it had: nothing to buy.'),
  willNotDo: z.array(said),
  cautions: z.array(caution),
  frontCautions: z.array(z.string()).describe('Those that matter most to this home, by id.'),
  electricianFor: z
    .enum(['route', 'home', 'nothing'])
    .describe('What a licensed electrician is needed for.'),
  toCall: z
    .strictObject({
      permitOffice: z.boolean(),
      gasFitter: z.boolean(),
      powerCompany: z.boolean(),
    })
    .describe('Whom else to call before anything of the route advised is connected.'),
  electrician: z.array(said),
  electrical: electricalSchema,
  settleIfEver: toSettle.describe('About equipment this plan neither buys nor lays beside.'),
  addOns: z.array(addOn).describe('Worth having beside the route advised; not in its cost.'),
  fuelToStore,
  ladder: z.array(ladderStep),
  lifeFirst,
  healthFirst,
  whatIsThere,
  waysOfLiving,
  comfortLost,
  leavingPoint: z.array(said),
  toFindOut: z.array(
    z.strictObject({
      question: z.string(),
      says: z.string(),
      how: z.string(),
      safety: z.boolean(),
      changes: z.number().describe('Mean change of the advice, in its one measure.'),
      code: z.string().describe('What the answer decides, as a code.'),
      decides: z.string(),
    }),
  ),
  assumptions: z.array(
    z.strictObject({
      question: z.string(),
      code: z
        .string()
        .describe('An open answer, or what was taken of the weather that no question asks.'),
      says: z.string(),
      ask: z.string().optional(),
      assumed: z.string(),
      because: z.string(),
      asked: z.boolean(),
    }),
  ),
  nextSteps: z.array(nextStep),
  grownOld: z
    .array(z.strictObject({ prices: z.string(), checked: z.string(), recheckAfter: z.string() }))
    .describe('Prices that were to be looked at again before the day of the plan.'),
  sources: lines,
});

/** The plan as plain data. */
export type PlanData = z.infer<typeof planSchema>;

/** What a reader of an older file has to know. */
const VERSIONS =
  'Version 2: a load is referred to by its id and name where version 1 had its name alone (carries, leavesOut, switchOff, hardestStart, startsTogether, starting, highEnd), what is left out and the gap have a code beside their words, and the gap has its seconds. Version 3: it names the language of its words. Version 4: it has what makes a home need less, and both ways of living, and what is there already. Version 5: what the analysis says stands as a code with its words, where version 4 had the words alone.';

/** The same as JSON Schema, for editors. */
export function planJsonSchema(): unknown {
  return z.toJSONSchema(planSchema.describe(VERSIONS), { target: 'draft-2020-12' });
}
