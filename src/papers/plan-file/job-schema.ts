import * as z from 'zod';
import { lines, namedLoads, season } from './shared-schema';

/** The job, as the plan file holds it; its figures stand in `goal` and `demand`. */
export const job = z.strictObject({
  loads: namedLoads.describe('What was named that must keep running.'),
  tooMuch: namedLoads.describe('Of these, more than any backup carries.'),
  oneRoom: z.union([
    z.strictObject({ told: z.boolean(), off: namedLoads, heaterOnlyAwake: z.boolean() }),
    z.literal('the whole home'),
  ]),
  hardSeason: z.union([season, z.literal('none')]),
  says: lines.length(3),
});
