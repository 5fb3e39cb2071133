import * as z from 'zod';

const day = z.string().regex(/^\d{4}-\d{2}-\d{2}$/, 'write the day as YYYY-MM-DD');

/** What every file in `src/tables/data` must hold. Checked when the program is built. */
export const tableFileSchema = z
  .strictObject({
    about: z.string().min(10),
    unit: z.record(z.string(), z.string()),
    source: z.strictObject({
      title: z.string().min(3),
      publisher: z.string().min(2),
      edition: z.string().optional(),
      section: z.string().optional(),
      url: z.string().optional(),
      standing: z.enum(['published', 'practice', 'memory', 'judgement']),
      year: z.number().int().optional(),
    }),
    checked: day,
    recheckAfter: day,
    notes: z.string().optional(),
    rowsFrom: z.string().optional(),
    rows: z.array(z.record(z.string(), z.unknown())).optional(),
  })
  .refine((t) => (t.rows === undefined) !== (t.rowsFrom === undefined), {
    message: 'give either rows or rowsFrom (a CSV file beside this one)',
  });
