import { type Figure, figure } from '../../quantity/figure';
import { type Made, worth } from '../../quantity/made';

/** Digits behind the point at most: no figure here is known so well. */
const MOST_PLACES = 9;

/** Digits behind the point with which a value shows at least three digits: 1487 -> 0, 13.4 -> 1, 0.576 -> 3. */
export function plainPlaces(value: number): number {
  if (value === 0) return 0;
  const digitsBefore = Math.floor(Math.log10(Math.abs(value))) + 1;
  return Math.min(MOST_PLACES, Math.max(0, 3 - digitsBefore));
}

export const rounded = (value: number, places: number): number => Number(value.toFixed(places));

/**
 * Digits behind the point for each operand of a step, as few as make the step true by hand: worked with the operands as
 * they are printed, and rounded as the result is printed, it gives that result.
 */
export function placesByHand(
  made: Made,
  result: number,
  resultPlaces: number,
): Map<Figure, number> {
  const printed = rounded(result, resultPlaces);
  for (let more = 0; more < MOST_PLACES; more++) {
    const places = placesOf(made, more);
    const hand = worth(withPlaces(made, places));
    if (rounded(hand, resultPlaces) === printed) return places;
  }
  return placesOf(made, MOST_PLACES);
}

function placesOf(made: Made, more: number): Map<Figure, number> {
  const all = made.by === 'ratio' ? [...made.of, ...made.under] : made.of;
  return new Map(all.map((one) => [one, Math.min(MOST_PLACES, plainPlaces(one.value) + more)]));
}

/** The same step with its operands as they are printed. */
function withPlaces(made: Made, places: ReadonlyMap<Figure, number>): Made {
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
