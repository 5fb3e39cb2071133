import * as z from 'zod';
import { lines } from './shared-schema';

/** A device that somebody cannot live without. */
export const lifeFirst = z
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
  .describe('What comes before any purchase where life hangs on a device.');

/** The health devices alone. */
export const healthFirst = z
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
  .describe('How long the health devices alone are covered; null where none was named.');

/** What is not carried and harms. */
export const comfortLost = z
  .strictObject({ heat: lines, cool: lines })
  .describe('Loads whose heat or cooling the route advised does not carry, where that harms.');
