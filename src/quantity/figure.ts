import type { FigureEnd } from './at-end';
import type { Cite } from './cite';
import type { Counted } from './counted';
import type { EndRule } from './end-rule';
import type { FigureName } from './figure-name';
import type { Made } from './made';
import type { Origin } from './origin';
import type { StepName } from './step-name';

/** Where a figure came from. `kind` is the sort of evidence, `is` what it rests on, as a code that `words` says. */
export interface Source {
  readonly kind:
    | 'told' // the household typed it
    | 'nameplate' // read off a label by the household
    | 'table' // a row of one of our tables, itself from a published source
    | 'formula' // worked out; `from` names the inputs
    | 'practice' // common practice, no published source
    | 'assumed'; // assumed because the household was not sure or was not asked
  readonly is?: Origin;
  /** Published source of a table row, or the arithmetic of a formula. */
  readonly cite?: Cite;
  readonly from?: readonly Figure[];
  /** The question whose answer it is, told or assumed. */
  readonly question?: string;
  /** What was counted, where the figure is a count. */
  readonly counted?: Counted;
  /** How the ends are set, where no step gives them. */
  readonly ends?: EndRule;
}

/** A number that never travels alone: likely value, range, unit and origin. `low <= value <= high`. */
export interface Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  /** SI or trade unit as printed: W, kW, kWh, VA, A, h, ft2, F, $, kWh/day ... */
  readonly unit: string;
  readonly source: Source;
  /** What the figure is, as a code that `words` says: running power of the furnace. */
  readonly name?: FigureName;
  /** The same as a code, for a figure that stands only in the steps of another. */
  readonly is?: StepName;
  /** The step that gave the likely value; missing where it was told, read in a table or counted. */
  readonly made?: Made;
  /** Steps of one end, where they are not those of the likely value at the ends of what they stand on. */
  readonly endSteps?: (end: FigureEnd) => Figure | undefined;
  /** It is this end of another figure. */
  readonly end?: FigureEnd;
}

export interface FigureParts {
  value: number;
  low?: number;
  high?: number;
  unit: string;
  source: Source;
  name?: FigureName;
  is?: StepName;
  /** The same value as a figure that knows its steps; asked for only when somebody wants to see them. */
  as?: () => Figure;
  /** The same of one end; undefined where no steps give it. */
  endAs?: (end: FigureEnd) => Figure | undefined;
}

/**
 * Make a figure. A missing bound is the value itself.
 * Throws RangeError when a part is not finite or the three are out of order: that is our own bug.
 */
export function figure(parts: FigureParts): Figure {
  const { value, low = value, high = value, unit, source, name, is, as, endAs } = parts;
  if (!(Number.isFinite(value) && Number.isFinite(low) && Number.isFinite(high))) {
    throw new RangeError(`figure ${spelled(name)} must be finite: ${low} ${value} ${high} ${unit}`);
  }
  if (low > value || value > high) {
    throw new RangeError(
      `figure ${spelled(name)} out of order: ${low} <= ${value} <= ${high} ${unit}`,
    );
  }
  const plain: Figure = {
    value,
    low,
    high,
    unit,
    source,
    ...(name !== undefined && { name }),
    ...(is !== undefined && { is }),
  };
  if (as === undefined && endAs === undefined) return plain;
  return new WorkedOut(plain, () => (as === undefined ? undefined : sameValue(plain, as())), endAs);
}

/** For whoever mends a fault of ours. */
const spelled = (name: FigureName | undefined) => (name === undefined ? '' : JSON.stringify(name));

/**
 * A figure that knows the step it came from. The step is no property of its own: a copy that changes the value loses
 * it, so that no figure can carry the arithmetic of another.
 */
export class WorkedOut implements Figure {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly source: Source;
  declare readonly name?: FigureName;
  declare readonly is?: StepName;
  declare readonly end?: FigureEnd;
  readonly #made: () => Made | undefined;
  readonly #endAs: FigureParts['endAs'];

  constructor(one: Figure, made: () => Made | undefined, endAs?: FigureParts['endAs']) {
    this.value = one.value;
    this.low = one.low;
    this.high = one.high;
    this.unit = one.unit;
    this.source = one.source;
    if (one.name !== undefined) this.name = one.name;
    if (one.is !== undefined) this.is = one.is;
    if (one.end !== undefined) this.end = one.end;
    this.#made = made;
    this.#endAs = endAs;
  }

  endSteps(end: FigureEnd): Figure | undefined {
    return this.#endAs?.(end);
  }

  get made(): Made | undefined {
    return this.#made();
  }
}

/** Share of a value by which two ways of working it out may differ: rounding of binary numbers. */
const SAME = 1e-9;

/** The step of a figure told apart, refused where it gives another value: that is our own bug. */
function sameValue(one: Figure, steps: Figure): Made | undefined {
  if (Math.abs(steps.value - one.value) > SAME * Math.max(1, Math.abs(one.value))) {
    throw new RangeError(
      `steps of ${spelled(one.name)} give ${steps.value}, not ${one.value} ${one.unit}`,
    );
  }
  return steps.made;
}
