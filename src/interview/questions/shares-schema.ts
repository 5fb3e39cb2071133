import * as z from 'zod';

const percent = z.number().positive().max(100);

/** What `questions/shares.yaml` must hold: by question, how likely each choice is and "not sure", in percent. */
export const sharesFileSchema = z.record(
  z.string(),
  z.strictObject({
    of: z.record(z.string(), percent).optional(),
    unsure: percent,
    /** Of a number: what is often typed. */
    often: z.array(z.number()).min(1).optional(),
    /** A source, or `judgement`. */
    from: z.string().min(8),
  }),
);
