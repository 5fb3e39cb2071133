import { type Figure, figure, type Source } from './figure';

export interface Labelled {
  readonly unit?: string;
  readonly name?: string;
  readonly source?: Source;
}

/** Sum of figures of one unit: low ends together, likely together, high ends together. Empty: zero. */
export function addFigures(figures: readonly Figure[], as: Labelled & { unit: string }): Figure {
  const sum = (pick: (f: Figure) => number) => figures.reduce((total, f) => total + pick(f), 0);
  return figure({
    value: sum((f) => f.value),
    low: sum((f) => f.low),
    high: sum((f) => f.high),
    unit: as.unit,
    name: as.name,
    source: as.source ?? formula('the sum of its parts', figures),
  });
}

/** A figure times a factor of 0 or more, or times a range of factors. */
export function timesFigure(
  of: Figure,
  by: number | { low: number; likely: number; high: number },
  as: Labelled = {},
): Figure {
  const range = typeof by === 'number' ? { low: by, likely: by, high: by } : by;
  return figure({
    value: of.value * range.likely,
    low: of.low * range.low,
    high: of.high * range.high,
    unit: as.unit ?? of.unit,
    name: as.name ?? of.name,
    source: as.source ?? formula(`${of.name ?? of.unit} x ${range.likely}`, [of]),
  });
}

/** The larger of two figures, end by end. */
export function largerFigure(a: Figure, b: Figure): Figure {
  return {
    ...(a.value >= b.value ? a : b),
    value: Math.max(a.value, b.value),
    low: Math.max(a.low, b.low),
    high: Math.max(a.high, b.high),
  };
}

/** Source of a figure worked out from others. */
export function formula(label: string, from: readonly Figure[] = [], cite?: string): Source {
  return { kind: 'formula', label, from, ...(cite === undefined ? {} : { cite }) };
}
