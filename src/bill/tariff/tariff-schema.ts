import * as z from 'zod';
import { TARIFF_KEY, TARIFF_VERSION } from './tariff-key';

const day = z
  .string()
  .regex(/^(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/)
  .describe('Day of the year, MM-DD, in quotes.');
const clock = z.number().int().min(0).max(24);
const days = z
  .enum(['every', 'weekdays', 'weekends'])
  .describe('Missing: every day. Holidays count as weekends.')
  .optional();
const hours = z
  .array(z.tuple([clock, clock]))
  .min(1)
  .describe('Clock hours: [[16, 21]] is 4 pm to 9 pm. Missing: all hours no other period names.')
  .optional();
const price = z.number().describe('$/kWh, such as 0.165 for 16.5 cents; may be negative.');

const season = z.strictObject({
  name: z.string().min(1),
  from: day,
  to: day,
  periods: z.array(z.strictObject({ name: z.string().min(1), price, days, hours })).min(1),
  tiers: z
    .array(z.strictObject({ upToKwh: z.number().positive().optional(), price }))
    .min(1)
    .describe('Prices by the amount, added to those by the clock; the last has no upToKwh.')
    .optional(),
  baselineKwhPerDay: z.number().nonnegative().optional(),
});

const demand = z.strictObject({
  name: z.string().min(1),
  windowMinutes: z.union([z.literal(15), z.literal(30), z.literal(60)]),
  rolling: z
    .boolean()
    .describe('true: any so many minutes in a row. Missing: those that begin with the clock.')
    .optional(),
  days,
  hours,
  prices: z.array(z.strictObject({ from: day, to: day, perKw: z.number().nonnegative() })).min(1),
  ratchet: z
    .strictObject({ share: z.number().min(0).max(1), months: z.number().int().min(1).max(12) })
    .describe('At least this share of the highest of so many earlier months is billed.')
    .optional(),
});

const exportRule = z.discriminatedUnion('rule', [
  z.strictObject({ rule: z.literal('none') }),
  z.strictObject({
    rule: z.literal('net-metering'),
    netting: z
      .enum(['total', 'by-period'])
      .describe('total: all kWh of a month against each other; by-period: each price by itself.'),
    trueUpMonth: z.number().int().min(1).max(12),
    trueUpPrice: price,
  }),
  z.strictObject({ rule: z.literal('net-billing'), seasons: z.array(season).min(1) }),
  z.strictObject({
    rule: z.literal('hourly-credit'),
    prices: z
      .array(z.array(price).length(24))
      .length(12)
      .describe('Twelve months, January first, of 24 hours each.'),
  }),
]);

/** Shape of a tariff. The rules about hours, seasons and tiers are in check-tariff.ts. */
export const tariffSchema = z.strictObject({
  name: z.string().min(1),
  about: z.string().optional(),
  holidays: z
    .array(z.string())
    .describe('Days priced as weekends: MM-DD, or a name such as labor-day or thanksgiving.')
    .optional(),
  fixed: z.strictObject({
    perMonth: z.number().nonnegative().optional(),
    perDay: z.number().nonnegative().optional(),
  }),
  minimumBill: z.number().nonnegative().describe('Least bill of a month, $.').optional(),
  minimumBillTax: z
    .enum(['before', 'after'])
    .describe('before: tax comes on top of the least bill; after: it is in it. Missing: before.')
    .optional(),
  seasons: z.array(season).min(1),
  tierBasis: z
    .enum(['day', 'month'])
    .describe('What the ends of tiers count for. Needed where there are tiers.')
    .optional(),
  tierProrateDays: z
    .number()
    .positive()
    .describe(
      'Ends of monthly tiers are scaled by the days of the bill / this; missing, they are not.',
    )
    .optional(),
  baselineCredit: z
    .number()
    .nonnegative()
    .describe("$/kWh taken off the first baselineKwhPerDay of a season's days.")
    .optional(),
  demand: z.array(demand).optional(),
  riders: z
    .array(
      z.strictObject({
        name: z.string().min(1),
        perKwh: price.optional(),
        perMonth: price.optional(),
        shareOfEnergy: z.number().describe('0.05 for 5 % of the energy charge.').optional(),
      }),
    )
    .optional(),
  taxes: z
    .array(
      z.strictObject({
        name: z.string().min(1),
        share: z.number().min(0).max(1).describe('0.06 for 6 %.'),
        on: z
          .enum(['charges', 'bill'])
          .describe('charges: before credit for solar sent out; bill: after it.'),
      }),
    )
    .optional(),
  export: exportRule,
  creditFloor: z
    .enum(['fixed', 'fixed-and-demand'])
    .describe('What credit may not pay; the rest is carried on. Missing: it may pay all.')
    .optional(),
});

/** A tariff as it stands in a file of its own. */
export const tariffFileSchema = z.strictObject({
  [TARIFF_KEY]: z.literal(TARIFF_VERSION).describe('Form of this file.'),
  ...tariffSchema.shape,
});

/** The form of a tariff as JSON Schema, for editors. */
export function tariffJsonSchema(): unknown {
  return z.toJSONSchema(tariffFileSchema, { target: 'draft-2020-12' });
}
