import * as z from 'zod';
import { tariffSchema } from '../../bill/tariff/tariff-schema';
import { kind, lines, said } from './shared-schema';

const range = z.strictObject({ low: z.number(), likely: z.number(), high: z.number() });
const rangeOrWords = z.union([range, z.string().describe('Why there is no figure.')]);
/** Parts of a route, each as a code and in words. */
const parts = z.array(z.strictObject({ code: z.string(), name: z.string() }));
const hours = z.strictObject({ ordinary: z.number(), major: z.number() });

const between = z.strictObject({
  strategy: z.enum(['self-use', 'time-shift', 'both', 'peak-limit', 'wait']),
  keptKwhByMonth: z.array(z.number()).length(12).describe('Kept for outages, January first.'),
  savingsPerYear: z.number(),
  ofThatSolar: z.number(),
  wearPerYear: z
    .number()
    .describe(
      'Held against each kWh in choosing when to work; counted in the life, not in the cost.',
    ),
  batteryLifeYears: z.union([z.number(), z.literal('no battery that wears')]),
  ceilingPerYear: z
    .union([z.number(), said, z.literal('left out')])
    .describe('After wear; why, when left out.'),
  billBefore: z.number(),
  billAfter: z.number(),
});

const route = z.strictObject({
  kind,
  firstCost: range,
  lifeCycleCost: range,
  netPresentValue: range,
  costPerYear: range,
  simplePayback: z.string(),
  discountedPayback: z.string(),
  rateOfReturn: z.string(),
  hoursRiddenPerYear: hours.describe('Hours it runs what it carries.'),
  carriesOfMustRun: z.strictObject({ carried: z.number().int(), of: z.number().int() }),
  perOutageHour: rangeOrWords,
  perOrdinaryHour: rangeOrWords,
  perBackupKwh: rangeOrWords,
  incentives: z.number(),
  lifeYears: z.union([z.number(), z.literal('does not wear')]),
  upkeepPerYear: z.number(),
  leadWeeks: z.strictObject({ low: z.number(), high: z.number() }),
  noise: z.string(),
  movesHouse: parts,
  betweenOutages: z.union([between, z.literal('does nothing on the bill')]),
});

/** The money part of a plan file; all amounts in $ of today. */
export const moneySchema = z.strictObject({
  studyYears: z.number().int(),
  realRate: z.number(),
  tariff: z.union([said, z.literal('off the grid')]),
  tariffInFull: z
    .union([tariffSchema, z.literal('off the grid')])
    .describe('The tariff counted, in the form of a tariff file.'),
  use: said,
  billFits: z
    .union([said, z.literal('yes'), z.literal('not checked')])
    .describe('Where it does not, the line of the bill to look at.'),
  outageHoursPerYear: hours,
  routes: z.array(route),
  reserveOf: z.string(),
  reserve: z.array(
    z.strictObject({
      share: z.number(),
      keptKwh: z.number(),
      savingsPerYear: z.number(),
      givenUpPerYear: z.number(),
      odds: z.number(),
      chosen: z.boolean(),
    }),
  ),
  lossesPerYear: z.array(z.strictObject({ name: z.string(), dollars: z.number() })),
  stages: z.array(
    z.strictObject({
      upTo: z.union([z.number(), z.literal('later')]),
      dollars: z.number(),
      parts,
    }),
  ),
  carriesOver: z
    .strictObject({ moves: parts, stays: parts, says: lines })
    .describe('What of the stages moves house, and what stays with the house.'),
  oldPrices: z.array(
    z.strictObject({
      name: z.string(),
      year: z.number().int(),
      quoted: z.boolean().describe('A quote of the household, no range of the table.'),
      says: z.string(),
    }),
  ),
  incentives: z.array(said),
});
