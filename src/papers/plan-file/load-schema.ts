import * as z from 'zod';
import { figure, hours, lines, namedLoad, namedLoads } from './shared-schema';

const bySeason = z.strictObject({ winter: figure, summer: figure, mild: figure });

/** A load as the plan file holds it. */
export const load = z.strictObject({
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

/** What a rank of loads draws together. */
export const demand = z.strictObject({
  running: figure,
  apparent: figure,
  starting: figure,
  hardestStart: z.union([namedLoad, z.literal('none')]),
  startsTogether: namedLoads.describe('Loads that start at the hardest moment.'),
  energy: bySeason,
  wattsByHour: z.strictObject({ winter: hours, summer: hours, mild: hours }),
  needs240Volts: z.boolean(),
});
