import * as z from 'zod';
import { route } from './route-schema';
import { kind, namedLoads } from './shared-schema';

const percent = z.number().int().min(0).max(100);

/** One line of what each dollar buys. */
export const listLine = z.strictObject({
  usd: z.number().describe('Likely price, with what the way of living costs.'),
  way: z.enum(['usual', 'thrifty']).describe('The way of living it is counted for.'),
  storedGal: z.union([z.number(), z.literal('no fuel in cans')]),
  lastsHours: z.union([
    z.strictObject({ likely: z.number(), careful: z.number() }),
    z.literal('no end foreseen'),
  ]),
  odds: percent.describe(
    "Of 100 outages of the goal's length, those carried with all that must run and that any backup can carry.",
  ),
  devices: z.union([percent, z.literal('no device that life hangs on')]),
  share: percent.describe('Things carried x mean share of the hours served, %.'),
  reachesGoal: z.boolean(),
  withinBudget: z.boolean(),
  advised: z.boolean(),
  route: z.union([route, z.literal('nothing bought')]),
});

const wayOn = z.strictObject({ route: kind, way: z.enum(['usual', 'thrifty']), usd: z.number() });
const nowhere = z.literal('leads nowhere');

/** What would do the job where nothing within the money does. */
export const waysOnSchema = z.union([
  z.strictObject({
    moreMoney: z.union([wayOn.extend({ moreUsd: z.number() }), nowhere]),
    littleMore: z.union([wayOn.extend({ moreUsd: z.number() }), nowhere]),
    shorterGoal: z.union([wayOn.extend({ hours: z.number() }), nowhere]),
    lessCarried: z.union([wayOn.extend({ without: namedLoads }), nowhere]),
    oneRoom: z.union([
      wayOn.extend({
        unitsUsd: z.number().describe('The heater or the air conditioner for the room, likely $.'),
        heats: z.boolean(),
        cools: z.boolean(),
        reachesGoal: z.boolean(),
        doesItWithin: z
          .boolean()
          .describe('It reaches the goal, and with the unit it is within the money.'),
      }),
      nowhere,
    ]),
    timetable: z
      .union([
        wayOn.extend({
          gallons: z.number().describe('Fuel once the cans are filled, gal.'),
          hours: z.number().describe('How long that lasts in the hours of the timetable only, h.'),
          coldFoodWarms: z.boolean(),
          roomCools: z.boolean(),
          roomWarms: z.boolean(),
        }),
        nowhere,
      ])
      .optional(),
  }),
  z.literal('not needed'),
]);

/** Where the route advised costs more than there is now: what comes first, and what waits for later money. */
export const firstBuySchema = z.union([
  z.strictObject({
    nowUsd: z.number(),
    shortUsd: z.number().describe('Likely price above what there is now.'),
    part: z.union([
      z.strictObject({ route: kind, usd: z.number() }),
      z.literal('nothing of it works by itself'),
    ]),
    restUsd: z.number().describe('What waits, likely $.'),
    thriftUsd: z.union([z.number(), z.literal('changes nothing, or costs more than there is now')]),
  }),
  z.literal('all of it at once'),
]);
