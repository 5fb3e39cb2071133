import * as z from 'zod';
import { figure, lines } from './shared-schema';

/** A caution as the plan file holds it. */
export const caution = z.strictObject({
  id: z.string(),
  severity: z.number().int().min(1).max(5),
  says: z.string(),
  who: lines,
  because: z.strictObject({ code: z.string(), says: z.string() }),
  figures: z
    .array(
      z.strictObject({
        load: z.string(),
        at: z.enum(['start', 'running', 'at-208-volts']),
        figure,
      }),
    )
    .describe('Figures of this home behind the caution.'),
  outOfSeason: z.boolean().describe('Of one season, where the plan is for the other alone.'),
  careful: z.boolean().describe('Shown because an answer is missing, not because of one.'),
  asks: z.string().describe('The open question that would settle it.'),
  proof: z.string(),
  cite: z.string(),
});
