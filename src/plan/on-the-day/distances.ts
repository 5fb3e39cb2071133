import type { Home } from '../../home/home';
import { hasFixedBattery, hasFixedGenerator, hasGenerator, isWired } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Route } from '../../routes/route';
import { namedValue } from '../../tables/named-values';
import { sitingDistances } from '../../tables/siting-distances';

export type DistanceId = 'generator-to-opening' | 'battery-to-opening' | 'panel-to-wall';

/** A distance of this home, ft, against the least there must be. */
export interface TowardsLeast {
  readonly id: DistanceId;
  /** Null where nobody has measured it, or all that is known is that it is less. */
  readonly toldFeet: number | null;
  /** Null where nothing asks for a least: it is told, and cable is paid by it. */
  readonly leastFeet: number | null;
}

/** A place told as 20 feet or more from every opening. */
const PACED_FEET = 20;

const INCHES_PER_FOOT = 12;

/** The distances this route asks for, and those told that it is laid out by. Nothing is said of a house nobody has seen. */
export function distances({ facts }: Home, route: Route): TowardsLeast[] {
  const of = traitsOf[route.kind];
  const least = (id: string) => namedValue(sitingDistances, id).value;
  const place = facts.told('engine-place') ? facts.value('engine-place') : null;
  const kind = hasFixedGenerator(of) ? 'standby' : 'portable';
  const generator: TowardsLeast = {
    id: 'generator-to-opening',
    toldFeet: place === 'open-20ft' ? PACED_FEET : null,
    leastFeet: least(`${kind}-engine-to-home`),
  };
  const battery: TowardsLeast = {
    id: 'battery-to-opening',
    toldFeet: null,
    leastFeet: least('storage-to-opening') / INCHES_PER_FOOT,
  };
  const cable: TowardsLeast = {
    id: 'panel-to-wall',
    toldFeet: facts.told('panel-distance') ? facts.number('panel-distance') : null,
    leastFeet: null,
  };
  return [
    ...(hasGenerator(of) ? [generator] : []),
    ...(hasFixedBattery(of) ? [battery] : []),
    ...(isWired(of) && cable.toldFeet !== null ? [cable] : []),
  ];
}
