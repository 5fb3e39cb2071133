import type { Figure } from '../../quantity/figure';
import { total } from '../../routes/costs';
import type { Part, Route } from '../../routes/route';

/** The route's price with some of its parts exchanged for another size; its other parts stay. */
export function priceOfExchange(route: Route, ...instead: readonly Part[]): Figure {
  const classes = instead.map((part) => part.equipmentClass);
  return total([...route.parts.filter((p) => !classes.includes(p.equipmentClass)), ...instead]);
}
