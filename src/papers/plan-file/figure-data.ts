import type { z } from 'zod';
import type { Figure } from '../../quantity/figure';
import type { Words } from '../../words/words';
import type { figure as figureSchema } from './shared-schema';

export function figureData(figure: Figure, words: Words): z.infer<typeof figureSchema> {
  const { cite } = figure.source;
  const origin = words.origin(figure.source);
  return {
    value: round(figure.value),
    low: round(figure.low),
    high: round(figure.high),
    unit: figure.unit,
    from: cite === undefined ? origin : `${origin} [${words.cite(cite)}]`,
  };
}

/** Four significant digits, so that the file does not promise more than we know. */
export function round(value: number): number {
  return value === 0 ? 0 : Number(value.toPrecision(4));
}
