import * as z from 'zod';
import { QUOTE_KEY, QUOTE_VERSION } from './quote-key';

const amount = (says: string, most: number) =>
  z.number().nonnegative().max(most).nullable().default(null).describe(says);
const yesNo = (says: string) => z.boolean().nullable().default(null).describe(says);

/** The form of a quote that came back: ten lines. What it does not say is left out. */
export const quoteSchema = z.strictObject({
  priceUsd: amount('In all, with permit and work, dollars.', 1_000_000),
  usableKwh: amount('Of the battery, as it can be used, kWh.', 1_000),
  continuousWatts: amount('For as long as wanted, watts.', 200_000),
  startingVa: amount('For the moment of a start, VA; where it says watts, those.', 500_000),
  transfer: z
    .enum(['none', 'interlock', 'transfer-switch', 'automatic'])
    .nullable()
    .default(null)
    .describe('What moves the house from the grid to the backup.'),
  leavesOut: z
    .array(z.string())
    .nullable()
    .default(null)
    .describe('Circuits it does not carry, by their ids; [] where it carries all.'),
  permitIncluded: yesNo('Permit and inspection are in the price.'),
  licenseNamed: yesNo('License number and insurance of who does the work are named.'),
  warrantyYears: amount('Years of warranty on equipment and work.', 50),
  weeks: amount('Weeks until it works.', 200),
});

export type QuoteRead = z.infer<typeof quoteSchema>;

/** The same with its first line, as JSON Schema for editors. */
export function quoteJsonSchema(): unknown {
  const whole = quoteSchema.extend({
    [QUOTE_KEY]: z.literal(QUOTE_VERSION).describe('Form of this file.'),
  });
  return z.toJSONSchema(whole, { target: 'draft-2020-12', io: 'input' });
}
