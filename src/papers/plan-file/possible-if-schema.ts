import * as z from 'zod';
import { caution } from './caution-schema';
import { route } from './route-schema';

/** Routes that stand only if something turns out to be true, as the plan file holds them. */
export const possibleIf = z.strictObject({
  conditions: z.array(
    z.strictObject({
      code: z.string(),
      if: z.string().describe('What would have to be true.'),
      settles: z.string().describe('Who settles it, as a code.'),
    }),
  ),
  gain: z
    .enum(['more', 'all', 'all-for-less', 'as-much-for-less', 'other-way'])
    .describe('What it would bring beside the route advised.'),
  routes: z.array(route).describe('Sized and priced as if it were true, by 5 drawn years.'),
  cautions: z.array(caution).describe('What can kill and comes with these routes.'),
});
