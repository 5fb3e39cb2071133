import type { Figure } from '../../quantity/figure';
import { formatRange } from '../../quantity/format-quantity';

/** A figure with its range and unit: "600 W (300 to 900 W)". */
export function sayFigure(figure: Figure, unit = figure.unit): string {
  return formatRange(figure.low, figure.value, figure.high, unit);
}
