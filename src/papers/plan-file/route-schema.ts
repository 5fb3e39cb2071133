import * as z from 'zod';
import { routeTitles } from '../../kinds/route-title';
import { figure, kind, namedLoad, namedLoads, said } from './shared-schema';

/** A way to get backup power, as the plan file holds it. */
export const route = z.strictObject({
  kind,
  called: z.enum(routeTitles).describe('What it is called, as a code.'),
  title: z.string(),
  verdict: z.enum(['works', 'works-if', 'cannot']),
  cannotBecause: z.array(said),
  notKnownYet: z.boolean().describe('It cannot be said to work only for want of answers.'),
  worksIf: z.array(said),
  carries: namedLoads,
  leavesOut: z.array(
    namedLoad.extend({
      code: z.string().describe('Why, as a code; `why` says it in words.'),
      why: z.string(),
      must: z.boolean(),
    }),
  ),
  power: z.union([
    z.strictObject({
      continuousWatts: z.number(),
      startVa: z.number(),
      asksRunning: figure,
      asksStarting: figure,
    }),
    z.literal('none'),
  ]),
  nameplateKwh: z.union([z.number(), z.literal('none')]),
  usableKwh: z.union([z.number(), z.literal('none')]),
  solarKw: z.union([z.number(), z.literal('none')]),
  sizeByOdds: z.union([
    z.strictObject({ nineOutagesInTenKwh: z.number(), nineYearsInTenKwh: z.number() }),
    z.literal('not sized by odds'),
  ]),
  fuel: z.union([
    z.strictObject({
      fuel: z.string(),
      perDay: figure,
      atHand: z.union([figure, z.literal('piped')]),
    }),
    z.literal('none'),
  ]),
  gap: z
    .strictObject({
      code: z.string(),
      lowSeconds: z.union([z.number(), z.literal('none')]),
      highSeconds: z.union([z.number(), z.literal('none')]),
      says: z.string(),
    })
    .describe('Time without power when the grid fails; no seconds where no power comes back.'),
  lasts: z.string(),
  lastsHours: z.union([figure, z.literal('no end foreseen')]),
  reachesGoal: z.boolean(),
  cost: figure,
  parts: z.array(
    z.strictObject({ code: z.string(), name: z.string(), cost: figure, year: z.number() }),
  ),
  notes: z.array(said),
});
