import { type Figure, WorkedOut } from './figure';
import { endsOf, type Made } from './made';

export type FigureEnd = 'low' | 'high';

/** The other end: what takes away or divides counts with it. */
export const otherEnd: Readonly<Record<FigureEnd, FigureEnd>> = { low: 'high', high: 'low' };

const known = { low: new WeakMap<Figure, Figure>(), high: new WeakMap<Figure, Figure>() };

/**
 * One end of a figure as a figure of its own, with the steps that give it where there are such. Where the end is the
 * likely value it is the figure itself. Asked twice it is the same one.
 */
export function atEnd(one: Figure, end: FigureEnd): Figure {
  if (one[end] === one.value) return one;
  const found = known[end].get(one);
  if (found !== undefined) return found;
  const { unit, source, name, is } = one;
  const value = one[end];
  const plain: Figure = {
    value,
    low: value,
    high: value,
    unit,
    source,
    end,
    ...(name !== undefined && { name }),
    ...(is !== undefined && { is }),
  };
  const made = new WorkedOut(plain, () => stepsTo(one, end));
  known[end].set(one, made);
  return made;
}

/** Share of a value by which two ways of working it out may differ: rounding of binary numbers. */
const SAME = 1e-9;

const same = (a: number, b: number) => Math.abs(a - b) <= SAME * Math.abs(b);

/** The step that gives the end: the figure's own, or that of its likely value at the ends of its operands. */
function stepsTo(one: Figure, end: FigureEnd): Made | undefined {
  const own = one.endSteps?.(end);
  if (own !== undefined) return same(own.value, one[end]) ? own.made : undefined;
  const { made } = one;
  return made !== undefined && same(endsOf(made)[end], one[end]) ? madeAt(made, end) : undefined;
}

/** The same step at one end of all that it stands on. */
function madeAt(made: Made, end: FigureEnd): Made {
  const at = (one: Figure) => atEnd(one, end);
  const against = (one: Figure) => atEnd(one, otherEnd[end]);
  switch (made.by) {
    case 'difference':
      return { ...made, of: [at(made.of[0]), against(made.of[1])] };
    case 'ratio':
      return { ...made, of: made.of.map(at), under: made.under.map(against) };
    case 'rounded':
    case 'rounded-up':
      return { ...made, of: [at(made.of[0])] };
    default:
      return { ...made, of: made.of.map(at) };
  }
}
