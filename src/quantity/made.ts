import type { Figure } from './figure';

/** A step somebody can do by hand: how a figure was worked out of others. */
export type Made =
  /** a + b + c */
  | { readonly by: 'sum'; readonly of: readonly Figure[] }
  /** a - b */
  | { readonly by: 'difference'; readonly of: readonly [Figure, Figure] }
  /** a x b / c / d */
  | { readonly by: 'ratio'; readonly of: readonly Figure[]; readonly under: readonly Figure[] }
  | { readonly by: 'largest' | 'smallest'; readonly of: readonly Figure[] }
  /** To the next multiple of `to`: the nearest, or the one above. */
  | { readonly by: 'rounded' | 'rounded-up'; readonly of: readonly [Figure]; readonly to: number };

type Pick = (figure: Figure) => number;

const likely: Pick = (f) => f.value;
const low: Pick = (f) => f.low;
const high: Pick = (f) => f.high;

/** What a step comes to at the likely values of its operands. */
export function worth(made: Made): number {
  return worthAt(made, likely, likely);
}

/** The ends of a step: what takes away or divides counts with its other end. */
export function endsOf(made: Made): { low: number; high: number } {
  return { low: worthAt(made, low, high), high: worthAt(made, high, low) };
}

/** @param less the end of what takes away or divides */
function worthAt(made: Made, end: Pick, less: Pick): number {
  switch (made.by) {
    case 'sum':
      return made.of.reduce((total, f) => total + end(f), 0);
    case 'difference':
      return end(made.of[0]) - less(made.of[1]);
    case 'ratio':
      return made.under.reduce(
        (left, f) => left / less(f),
        made.of.reduce((product, f) => product * end(f), 1),
      );
    case 'largest':
      return Math.max(...made.of.map(end));
    case 'smallest':
      return Math.min(...made.of.map(end));
    case 'rounded':
      return Math.round(end(made.of[0]) / made.to) * made.to;
    case 'rounded-up':
      return Math.ceil(end(made.of[0]) / made.to) * made.to;
  }
}

/** Every figure a step stands on. */
export function operandsOf(made: Made): readonly Figure[] {
  return made.by === 'ratio' ? [...made.of, ...made.under] : made.of;
}
