/** Where a figure came from. `kind` is the sort of evidence, `label` the words a person reads. */
export interface Source {
  readonly kind:
    | 'told' // the household typed it
    | 'nameplate' // read off a label by the household
    | 'table' // a row of one of our tables, itself from a published source
    | 'formula' // worked out; `from` names the inputs
    | 'practice' // common practice, no published source
    | 'assumed'; // assumed because the household was not sure or was not asked
  readonly label: string;
  /** Published source of a table row, or the arithmetic of a formula. */
  readonly cite?: string;
  readonly from?: readonly Figure[];
}

/** A number that never travels alone: likely value, range, unit and origin. `low <= value <= high`. */
export interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** SI or trade unit as printed: W, kW, kWh, VA, A, h, ft2, F, $, kWh/day ... */
  readonly unit: string;
  readonly source: Source;
  /** What the figure is, in words: "running power of the furnace". */
  readonly name?: string;
}

export interface FigureParts {
  value: number;
  low?: number;
  high?: number;
  unit: string;
  source: Source;
  name?: string;
}

/**
 * Make a figure. A missing bound is the value itself.
 * Throws RangeError when a part is not finite or the three are out of order: that is our own bug.
 */
export function figure(parts: FigureParts): Figure {
  const { value, low = value, high = value, unit, source, name } = parts;
  if (![value, low, high].every(Number.isFinite)) {
    throw new RangeError(`figure ${name ?? ''} must be finite: ${low} ${value} ${high} ${unit}`);
  }
  if (low > value || value > high) {
    throw new RangeError(
      `figure ${name ?? ''} out of order: ${low} <= ${value} <= ${high} ${unit}`,
    );
  }
  return name === undefined
    ? { value, low, high, unit, source }
    : { value, low, high, unit, source, name };
}
