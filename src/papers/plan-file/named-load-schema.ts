import { z } from 'zod';

/** A load referred to: its id among the loads of the plan, and its name for whoever reads. */
export const namedLoadSchema = z.strictObject({ id: z.string(), name: z.string() });
export const namedLoadsSchema = z.array(namedLoadSchema);
