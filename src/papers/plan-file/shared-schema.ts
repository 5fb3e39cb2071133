import * as z from 'zod';
import { routeKinds } from '../../kinds/route-kind';

/** A figure as the plan file holds it: rounded, with its unit and where it came from. */
export const figure = z.strictObject({
  value: z.number().describe('Likely value.'),
  low: z.number(),
  high: z.number(),
  unit: z.string(),
  from: z.string().describe('Where it comes from, the source in square brackets.'),
});

export const season = z.enum(['winter', 'summer', 'mild']);
export const hours = z.array(z.number()).length(24);
export const lines = z.array(z.string());
/** What the plan decided, as a code, and what it says. */
export const said = z.strictObject({ code: z.string(), says: z.string() });
export const kind = z.enum(routeKinds);

/** A load referred to: its id among the loads of the plan, and its name for whoever reads. */
export const namedLoad = z.strictObject({ id: z.string(), name: z.string() });
export const namedLoads = z.array(namedLoad);
