import type { z } from 'zod';
import type { Figure } from '../../quantity/figure';
import type { figure as figureSchema } from './shared-schema';

export function figureData(figure: Figure): z.infer<typeof figureSchema> {
  const { label, cite } = figure.source;
  return {
    value: round(figure.value),
    low: round(figure.low),
    high: round(figure.high),
    unit: figure.unit,
    from: cite === undefined ? label : `${label} [${cite}]`,
  };
}

/** Four significant digits, so that the file does not promise more than we know. */
export function round(value: number): number {
  return value === 0 ? 0 : Number(value.toPrecision(4));
}
