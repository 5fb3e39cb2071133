import * as z from 'zod';

/** Something to do next. */
export const nextStep = z.strictObject({
  id: z.string().describe('What the step is about.'),
  what: z.string(),
  told: z.string().optional().describe('Words of the household, as it typed them.'),
  who: z.string(),
});

/** Something worth having beside the route advised. */
export const addOn = z.strictObject({
  id: z.string(),
  name: z.string(),
  because: z.string(),
  usdLow: z.number(),
  usdLikely: z.number(),
  usdHigh: z.number(),
  year: z.number().int(),
  cost: z.string(),
});

/** Fuel still to be stored for the goal, gal. */
export const fuelToStore = z.union([
  z.strictObject({
    code: z.string(),
    says: z.string(),
    needGallons: z.number(),
    moreGallons: z.number(),
    reachesGoal: z.boolean(),
  }),
  z.literal('nothing more'),
]);
