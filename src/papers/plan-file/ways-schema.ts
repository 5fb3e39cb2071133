import * as z from 'zod';
import { figure, hours, kind, namedLoad, namedLoads, season } from './shared-schema';

const way = z.enum(['usual', 'thrifty']);

const profile = z.strictObject({
  energy: figure.describe('What must run takes on a hard day of that season.'),
  running: figure,
  starting: figure,
  wattsByHour: hours.describe('Likely mean power of each hour, W.'),
});

const inWay = z.strictObject({
  odds: z.number().describe('Share of outages of the goal, 0 to 1.'),
  carefulOdds: z.number(),
  hours: z.union([
    z.strictObject({ likely: z.number(), careful: z.number() }),
    z.literal('not counted'),
  ]),
  reachesGoal: z.boolean(),
});

const day = z.strictObject({
  afterHours: z.number(),
  servedKwh: z.number(),
  chargeKwh: z.number(),
  gallonsLeft: z.number().nullable(),
  stoppedAfter: z.number().nullable(),
});

const measure = z.strictObject({
  id: z.string(),
  use: z
    .enum(['thrifty', 'counted', 'bought', 'later', 'margin'])
    .describe('Thrifty: the thrifty way is made of it. Counted: every sum knows it already.'),
  does: z.string(),
  gives: z.string().describe('The comfort given up, or the care it asks for.'),
  savesOf: z.enum(['must run', 'must run and good to have', 'everything']),
  season,
  savesWatts: z.number(),
  savesStartVa: z.number(),
  savesKwhPerDay: z.number(),
  savesPackKwhPerDay: z.number().describe('What a plug-in pack draws less for itself.'),
  loads: namedLoads,
  cost: figure,
  who: z.string(),
  notWhere: z.array(z.string()),
  gallons: z.number().nullable(),
  setF: z.number().nullable(),
});

/** Need less first, and the two ways of living. */
export const waysOfLiving = z.strictObject({
  season,
  usual: profile,
  thrifty: profile,
  thriftyCost: figure.describe('What the thrifty measures cost together.'),
  turns: z.array(
    z.strictObject({
      load: namedLoad,
      hours: z
        .array(z.tuple([z.number(), z.number()]))
        .describe('Hours of the day in which it has power, from and until.'),
    }),
  ),
  days: z
    .union([z.strictObject({ usual: z.array(day), thrifty: z.array(day) }), z.literal('alike')])
    .describe('The careful count of the route advised, day by day.'),
  measures: z.array(measure),
  routes: z.array(
    z.strictObject({
      route: kind,
      sizedFor: way,
      gallonsCounted: z.number().nullable(),
      thriftilyOnlyWhileOn: z
        .literal(true)
        .optional()
        .describe('Thriftily the generator runs only while something on it is on.'),
      usual: inWay,
      thrifty: inWay,
    }),
  ),
});
