import { type Figure, figure } from '../../quantity/figure';
import { type Made, operandsOf, worth } from '../../quantity/made';

/** Digits behind the point at most: no figure here is known so well, but a third of $10,000 needs them to come out by hand. */
const MOST_PLACES = 12;

/** Digits behind the point with which a value shows at least three digits: 1487 -> 0, 13.4 -> 1, 0.576 -> 3. */
export function plainPlaces({ value, unit }: Figure): number {
  if (value === 0) return 0;
  const digitsBefore = Math.floor(Math.log10(Math.abs(value))) + 1;
  const most = unit === 'F' ? 1 : MOST_PLACES;
  const places = Math.min(most, Math.max(0, 3 - digitsBefore));
  return unit === '$' && Number.isInteger(value) ? 0 : wholeCents(places, unit);
}

/** Dollars have cents or none. */
const wholeCents = (places: number, unit: string) => (unit === '$' && places === 1 ? 2 : places);

export const rounded = (value: number, places: number): number => Number(value.toFixed(places));

/**
 * Digits behind the point for every figure an explanation prints, as few as make each step true by hand: worked with the
 * operands as they are printed, and rounded as the result is printed, it gives that result. A figure has the same digits
 * wherever it stands, under whichever of the roots.
 */
export function placesByHand(...roots: readonly Figure[]): Places {
  const places: Places = new Map(roots.map((root) => [root, plainPlaces(root)]));
  const steps = roots.flatMap(stepsUnder);
  for (let raised = true; raised; ) {
    raised = false;
    for (const { figure: of, made } of steps) {
      for (const one of operandsOf(made)) {
        if (!places.has(one)) places.set(one, plainPlaces(one));
      }
      raised = raiseUntilTrue(of, made, places) || raised;
    }
  }
  return places;
}

export type Places = Map<Figure, number>;

/** What a hand would not see; a result half way between two may be rounded either way. */
const SLACK = 1e-10;

/** True where more digits were needed. */
function raiseUntilTrue(given: Figure, made: Made, places: Places): boolean {
  const digits = places.get(given)!;
  const printed = rounded(given.value, digits);
  let raised = false;
  const far = () => Math.abs(worth(withPlaces(made, places)) - printed);
  while (far() > 0.5 * 10 ** -digits + SLACK) {
    const low = operandsOf(made).filter((one) => places.get(one)! < MOST_PLACES);
    if (low.length === 0) return raised;
    for (const one of new Set(low)) places.set(one, wholeCents(places.get(one)! + 1, one.unit));
    raised = true;
  }
  return raised;
}

interface Step {
  readonly figure: Figure;
  readonly made: Made;
}

/** Every step of an explanation once, a result before its operands. */
export function stepsUnder(root: Figure): Step[] {
  const found = new Map<Figure, Made>();
  const look = (figure: Figure) => {
    const made = stepOf(figure);
    if (made === undefined || found.has(figure)) return;
    found.set(figure, made);
    operandsOf(made).forEach(look);
  };
  look(root);
  return [...found].map(([figure, made]) => ({ figure, made }));
}

/** What stands for a figure that is worked out no further: the one thing it is the same as, by steps that change nothing. */
export function shownFor(figure: Figure): Figure {
  const { made, value } = figure;
  const all = made === undefined ? [] : operandsOf(made);
  const same = all.length === 1 && all[0]!.value === value && stepOf(figure) === undefined;
  return same ? shownFor(all[0]!) : figure;
}

const steps = new WeakMap<Figure, Made>();

/** The step to be shown: one that changes nothing is passed over. Asked twice it is the same one. */
export function stepOf(figure: Figure): Made | undefined {
  const known = steps.get(figure);
  if (known !== undefined) return known;
  const { made, value } = figure;
  const all = made === undefined ? [] : operandsOf(made);
  const found = all.length === 1 && all[0]!.value === value ? stepOf(all[0]!) : made;
  if (found !== undefined) steps.set(figure, found);
  return found;
}

/** The same step with its operands as they are printed. */
function withPlaces(made: Made, places: Places): Made {
  const as = (one: Figure) =>
    figure({ value: rounded(one.value, places.get(one)!), unit: one.unit, source: one.source });
  switch (made.by) {
    case 'ratio':
      return { ...made, of: made.of.map(as), under: made.under.map(as) };
    case 'difference':
      return { ...made, of: [as(made.of[0]), as(made.of[1])] };
    case 'rounded':
    case 'rounded-up':
      return { ...made, of: [as(made.of[0])] };
    default:
      return { ...made, of: made.of.map(as) };
  }
}
