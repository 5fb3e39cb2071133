import * as z from 'zod';
import { kind, lines, namedLoads, said } from './shared-schema';

const amount = z.union([z.number(), z.literal('not known')]);
const fits = z.enum(['yes', 'no', 'ask']);

const loadSum = z.strictObject({
  code: z.enum(['optional-existing', 'optional-new', 'standard']),
  method: z.string(),
  lines: z.array(
    z.strictObject({
      code: z.string(),
      label: z.string(),
      va: z.number(),
      amps: z.number(),
      section: z.string(),
      counted: z.boolean().describe('False: a subtotal, or a load left out as the smaller of two.'),
    }),
  ),
  totalVa: z.number(),
  amps: z.number(),
  carefulAmps: z.number().describe('High ends of all ranges, car charging at 125 %.'),
  notes: z.array(said),
});

const loadCalculation = z.strictObject({
  verdict: z.enum(['passes', 'marginal', 'over', 'not-judged']),
  code: z.string(),
  says: z.string(),
  editions: z.array(
    z.strictObject({
      edition: z.number().int(),
      sums: z.array(loadSum),
      neutralAmps: amount.describe('Load of the service neutral, NEC 220.61.'),
      note: said,
    }),
  ),
  assumptions: z.array(said),
});

const starting = z.strictObject({
  route: kind,
  surgeVa: z.number(),
  peakVa: z.number(),
  starting: namedLoads,
  allAtOnceVa: z.number(),
  allAtOnceHolds: z.boolean(),
  order: namedLoads.describe('Motors in the order to switch them on.'),
  keepApart: z
    .array(namedLoads.length(2))
    .describe('Pairs that it does not start at the same moment.'),
  dipPercent: amount.describe('Not known for an inverter, which trips at its limit instead.'),
  limit: said,
  cure: said,
});

const highEnd = z.strictObject({
  route: kind,
  byInverter: z.boolean().describe('It shuts off above what it gives; a generator sags or trips.'),
  what: z.enum(['running', 'starting']),
  unit: z.enum(['W', 'VA']),
  asks: z.number().describe('High end of the need.'),
  gives: z.number(),
  measure: namedLoads,
  offFirst: namedLoads.describe('Enough to make the rest fit; empty when none may go.'),
  says: z.string(),
});

const wire = z.strictObject({
  code: z.string(),
  run: z.string(),
  breakerAmps: z.number(),
  loadAmps: z.number().describe('What the drop is worked out at.'),
  volts: z.number(),
  oneWayFt: z.number(),
  lengthFrom: z.string(),
  sizes: z.array(
    z.strictObject({
      metal: z.enum(['copper', 'aluminum']),
      columnC: z.union([z.literal(60), z.literal(75)]),
      size: z.string(),
      dropPercent: amount,
      because: z.string(),
    }),
  ),
});

const scope = z.strictObject({
  purpose: z.string(),
  circuits: z.array(
    z.strictObject({
      name: z.string(),
      volts: z.number(),
      watts: z.string(),
      startVa: z.string(),
      rank: z.enum(['must', 'optional']),
      how: z.string(),
      known: z.string().describe('In a word, as a code.'),
    }),
  ),
  requirements: z.array(said),
  quotePoints: z.array(said),
  siteQuestions: z.array(said),
  householdMay: lines,
  confirmLocally: z.string(),
});

/** Pairs of answers that do not fit together. */
export const toSettle = z.array(
  z.strictObject({ id: z.string(), asks: z.string(), answers: lines, questions: lines }),
);

/** The form of the electrical half of a plan file. */
export const electricalSchema = z.strictObject({
  service: z.array(
    z.strictObject({
      code: z.string(),
      what: z.string(),
      value: z.string(),
      how: z.string(),
      known: z.enum(['told', 'assumed', 'not-known']),
    }),
  ),
  toSettle,
  loadCalculation,
  metered: z.strictObject({
    kind: z.enum(['refused', 'done']),
    code: z.string().describe('Verdict, or why it is refused.'),
    says: z.string(),
    amps: amount,
    carefulAmps: amount,
  }),
  panelFit: z.strictObject({
    sourceAt125Amps: amount,
    ways: z.array(
      z.strictObject({
        code: z.string(),
        way: z.string(),
        sections: z.strictObject({
          edition2017: z.string(),
          edition2020: z.string(),
          edition2023: z.string(),
        }),
        roomAmps: amount,
        fits,
      }),
    ),
    traps: z.array(said),
    notes: z.array(said),
  }),
  waysOut: z.array(
    z.strictObject({
      code: z.string(),
      way: z.string(),
      when: z.string(),
      usdLow: z.number(),
      usdLikely: z.number(),
      usdHigh: z.number(),
      year: z.number().int(),
    }),
  ),
  starting: z.array(starting),
  highEnd: z.array(highEnd),
  connections: z.array(
    z.strictObject({
      code: z.string(),
      way: z.string(),
      fits: z.enum(['possible', 'ask', 'no']),
      against: z.string().describe('What stands against it, as a code.'),
      says: z.string(),
      capacity: said,
    }),
  ),
  transferPoints: z.array(said),
  /** Not in plans written before it was asked. */
  solarRow: z.array(said).optional(),
  wires: z.array(wire),
  editionNotes: z.array(z.strictObject({ edition: z.number().int(), says: z.string() })),
  siting: z.array(
    z.strictObject({
      verdict: z.enum(['no', 'ask', 'needed', 'kept']),
      code: z.string(),
      says: z.string(),
      cite: z.string(),
    }),
  ),
  scope,
});
