import * as z from 'zod';
import { figure, kind } from './shared-schema';

/** What the household has already that helps in an outage. */
export const whatIsThere = z.array(
  z.strictObject({
    id: z.string(),
    size: z.union([figure, z.literal('not told')]),
    ageYears: z.union([z.number(), z.literal('not asked')]),
    needs: z.array(z.string()).describe('What makes it work in an outage, as codes.'),
    counts: z.boolean().describe('False: nothing in this plan leans on it.'),
    builtOn: z
      .array(z.strictObject({ route: kind, usd: z.number() }))
      .describe('Routes that add to it, with what they cost on top.'),
    says: z.string(),
  }),
);
