import * as z from 'zod';
import { namedLoads } from './shared-schema';

/** A rung of the ladder: what is switched off, and when. */
export const ladderStep = z.strictObject({
  atPercent: z
    .number()
    .nullable()
    .describe('Of the store that is left; 100 from the start, null on piped gas.'),
  atGallons: z
    .number()
    .nullable()
    .describe('Gallons left in cans or in the tank; null where no fuel is kept.'),
  switchOff: namedLoads,
  lessens: namedLoads.describe('Run thriftily from here on.'),
  savesWatts: z.number(),
  gainsHours: z.union([z.number(), z.literal('not counted')]).describe('By the likely count.'),
  carefulGainsHours: z.union([z.number(), z.literal('not counted')]),
  whyCode: z.string(),
  why: z.string(),
});
