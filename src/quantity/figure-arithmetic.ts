import type { Cite } from './cite';
import { type Figure, figure, type Source, WorkedOut } from './figure';
import type { FigureName } from './figure-name';
import { endsOf, type Made, operandsOf, worth } from './made';
import type { Origin } from './origin';
import type { Spread } from './spread';
import type { StepName } from './step-name';

export interface Labelled {
  readonly unit?: string;
  readonly name?: FigureName;
  readonly is?: StepName;
  readonly source?: Source;
}

/** A figure by a step from others, which it keeps: value and step cannot disagree. Ends by the ends of the others. */
export function worked(made: Made, as: Labelled & { unit: string }): Figure {
  const plain = figure({
    value: worth(made),
    ...endsOf(made),
    unit: as.unit,
    name: as.name,
    is: as.is,
    source: as.source ?? formula('worked-out', operandsOf(made)),
  });
  return new WorkedOut(plain, () => made);
}

/** A figure that stands in a step and is worked out no further: where it comes from, and no range of its own. */
export function operand(
  value: number,
  unit: string,
  is: StepName,
  { kind = 'formula', ...more }: Partial<Source> = {},
): Figure {
  return figure({ value, unit, is, source: { kind, ...more } });
}

export const WATTS_IN_KW = operand(1000, 'count', 'watts-in-kw');
export const MINUTES_IN_HOUR = operand(60, 'count', 'minutes-in-hour');
export const HOURS_IN_DAY = operand(24, 'count', 'hours-in-day');

/** Sum of figures of one unit: low ends together, likely together, high ends together. Empty: zero. */
export function addFigures(figures: readonly Figure[], as: Labelled & { unit: string }): Figure {
  const source = as.source ?? formula('sum-of-parts', figures);
  return worked({ by: 'sum', of: figures }, { ...as, source });
}

/** A figure times a factor of 0 or more, or times a range of factors, or times another figure. */
export function timesFigure(one: Figure, by: number | Spread | Figure, as: Labelled = {}): Figure {
  const factor = typeof by === 'object' && 'source' in by ? by : factorOf(by, as.source);
  return worked(
    { by: 'ratio', of: [one, factor], under: [] },
    {
      unit: as.unit ?? one.unit,
      name: as.name ?? (as.is === undefined ? one.name : undefined),
      is: as.is,
      source: as.source ?? formula({ code: 'times', factor: fourDigits(factor.value) }, [one]),
    },
  );
}

/** No factor is known better, and none is promised better in a file. */
const fourDigits = (value: number) => Number(value.toPrecision(4));

/** A bare factor: what the result says of itself is what there is to say of it. */
function factorOf(by: number | Spread, source: Source = { kind: 'formula' }) {
  const {
    low,
    likely: value,
    high,
  } = typeof by === 'number' ? { low: by, likely: by, high: by } : by;
  return figure({ value, low, high, unit: 'count', source });
}

/** The larger of two figures, end by end. */
export function largerFigure(a: Figure, b: Figure): Figure {
  const larger = a.value >= b.value ? a : b;
  const plain = {
    ...larger,
    value: Math.max(a.value, b.value),
    low: Math.max(a.low, b.low),
    high: Math.max(a.high, b.high),
  };
  return new WorkedOut(plain, () => ({ by: 'largest', of: [a, b] }));
}

/** Source of a figure worked out from others. */
export function formula(is: Origin, from: readonly Figure[] = [], cite?: Cite): Source {
  return { kind: 'formula', is, from, ...(cite === undefined ? {} : { cite }) };
}
