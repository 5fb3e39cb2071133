import * as z from 'zod';
import { kind, said, season } from './shared-schema';

const share = z.union([z.number(), z.literal('full is not enough')]);
const odds = z.strictObject({
  hours: z.number(),
  season: z
    .number()
    .min(0)
    .max(1)
    .describe('Share ridden through of outages that start in the season.'),
  year: z.number().min(0).max(1),
  months: z.array(share).length(12),
  standardError: z
    .union([z.number(), z.literal('none')])
    .describe('Of the share in the season; none where every start was counted or all went alike.'),
});

/** The form of this part of the plan file. */
export const rideThroughSchema = z.strictObject({
  season,
  goalHours: z.number(),
  routes: z.array(
    z.strictObject({
      kind,
      basis: said,
      carriesOfMustRun: z
        .number()
        .int()
        .describe('Things that must keep running and that it carries; the odds speak of these.'),
      mustRunThings: z.number().int(),
      oddsMustRun: z.array(odds),
      oddsMustAndGood: z.array(odds),
      oddsEverything: z.array(odds),
      fromHalfFull: z.union([z.number(), z.literal('not counted')]),
      chargeAtStartKwh: z.union([
        z.strictObject({ median: share, oneInTen: share, worst: share }),
        z.literal('not counted'),
      ]),
      keptForOutagesByMonth: z.union([z.array(share).length(12), z.literal('not counted')]),
      carefulOddsOfGoal: z
        .number()
        .min(0)
        .max(1)
        .describe('At hungry use, the low end of the fuel and with a thirsty generator.'),
      onceCansAreFilled: z
        .union([
          z.strictObject({ gallons: z.number(), odds: z.number(), carefulOdds: z.number() }),
          z.literal('no cans to fill'),
        ])
        .optional()
        .describe('Of outages of the goal, with the cans of the parts list filled.'),
      unservedKwh: z
        .number()
        .describe('Mean, at the house, of an outage of the goal in the season.'),
      unservedHours: z.number().describe('Mean hours not fully served, from sampled starts.'),
      failsFirst: said,
      badCase: z.union([
        z.strictObject({
          month: z.number().int().min(1).max(12),
          hourOfDay: z.number().int(),
          endsAfterHours: z.union([z.number(), z.literal('ridden through')]),
          storedGal: z
            .number()
            .optional()
            .describe('Counted once the cans are filled, where there is none today.'),
          loadKw: z.array(z.number()),
          servedKw: z.array(z.number()).describe('Of it, what was given.'),
          sunKw: z.array(z.number()),
          chargeKwh: z.array(z.number()),
          fuelLeft: z.array(z.number()).describe('Empty without fuel that is kept here.'),
        }),
        z.literal('not drawn'),
      ]),
      usedOtherwise: z.array(
        z.strictObject({
          code: z.string(),
          says: z.string(),
          odds: z.number().min(0).max(1).describe('Of outages of the goal in the season.'),
          carefulOdds: z.number().min(0).max(1).describe('The same by the careful count.'),
          standardError: z.union([z.number(), z.literal('none')]),
        }),
      ),
      neighbors: z.array(
        z.strictObject({
          code: z.string().describe('What is larger or smaller.'),
          larger: z.boolean(),
          says: z.string(),
          nameplateKwh: z.union([z.number(), z.literal('no battery')]),
          solarKw: z.number(),
          odds: z.union([z.number(), z.literal('does not start or carry what must run')]),
          carefulOdds: z.union([z.number(), z.literal('does not start or carry what must run')]),
          oddsOnceCansAreFilled: z.number().min(0).max(1).optional(),
          costUsd: z.number(),
        }),
      ),
    }),
  ),
  otherRoutes: z.array(
    z.strictObject({
      kind,
      carriesOfMustRun: z.number().int(),
      oddsMustRun: z.array(odds),
    }),
  ),
});
