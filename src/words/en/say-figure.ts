import type { Figure } from '../../quantity/figure';
import { shownRange } from '../../quantity/shown';

/** A figure with its range and unit: "600 W (300 to 900 W)". */
export function sayFigure(figure: Figure, unit = figure.unit): string {
  return shownRange(figure, unit);
}
