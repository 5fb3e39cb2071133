import * as z from 'zod';
import { figure, season } from './shared-schema';

/** What was told of the bill against the loads. */
export const billCheck = z.strictObject({
  verdict: z.enum(['not-possible', 'fits', 'loads-over-bill', 'loads-likely-high']),
  code: z.string(),
  says: z.string(),
  bill: figure.optional(),
  loads: figure.optional(),
  season: season.optional(),
});

/** Twelve bills and what they split into. */
export const billYear = z
  .strictObject({
    monthsKwh: z.array(z.number()).length(12).describe('As told, January first.'),
    anyWeather: figure,
    withCold: figure,
    withHeat: figure,
    misfit: figure,
    explained: figure,
  })
  .nullable()
  .describe('Twelve bills split by degree days; null where they were not told.');
