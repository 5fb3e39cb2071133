import type { Home } from '../../home/home';
import { hasFixedGenerator, hasGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { namedValue } from '../../tables/named-values';
import { sitingDistances } from '../../tables/siting-distances';

export type DistanceId = 'generator-to-opening';

/** A distance of this home, ft, against the least there must be. */
export interface TowardsLeast {
  readonly id: DistanceId;
  /** Null where nobody has measured it, or all that is known is that it is less. */
  readonly toldFeet: number | null;
  readonly leastFeet: number;
}

/** A place told as 20 feet or more from every opening. */
const PACED_FEET = 20;

/** The distances this route asks for. Nothing is said of a house nobody has seen. */
export function distances({ facts }: Home, route: Route): TowardsLeast[] {
  const of = traitsOf[route.kind];
  if (!hasGenerator(of)) return [];
  const place = facts.told('engine-place') ? facts.value('engine-place') : null;
  const kind = hasFixedGenerator(of) ? 'standby' : 'portable';
  return [
    {
      id: 'generator-to-opening',
      toldFeet: place === 'open-20ft' ? PACED_FEET : null,
      leastFeet: namedValue(sitingDistances, `${kind}-engine-to-home`).value,
    },
  ];
}
