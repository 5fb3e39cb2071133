import type { Home, Load, Season } from '../home/home';
import { AWAKE, type AwakeHours } from '../home/loads/awake';
import type { LoadId } from '../home/loads/load-id';
import { wasAskedAbout } from '../home/loads/load-told';

/** What one warm or cool room changes. */
export interface OneRoom {
  /** The household said so; false: the plan counts on it. */
  readonly told: boolean;
  /** What heats or cools the whole home and stays off in an outage. */
  readonly off: readonly LoadId[];
  /** When the plug-in heater of that room runs; null where none must. */
  readonly heaterOnlyAwake: AwakeHours | null;
}

/** Null where the whole home is heated and cooled as ever. */
export function oneRoomOf({ facts, loads, goalSeasons }: Home): OneRoom | null {
  // A question that was never put makes no room of a house.
  if (!facts.asked('one-room') || !facts.is('one-room', 'yes')) return null;
  const off = loads.filter(
    (load) =>
      load.offInOutage &&
      wasAskedAbout(facts, load) &&
      load.restsOn.some(isHeatOrCool) &&
      goalSeasons.some((season) => worksIn[season]?.includes(load.follows)),
  );
  if (off.length === 0) return null;
  return {
    told: facts.told('one-room'),
    off: off.map(({ id }) => id),
    heaterOnlyAwake: loads.some((load) => load.awakeOnly && load.rank === 'must') ? AWAKE : null,
  };
}

/** What heats is of use in winter, what cools in summer. */
const worksIn: Partial<Record<Season, readonly Load['follows'][]>> = {
  winter: ['cold', 'both'],
  summer: ['heat', 'both'],
};

const isHeatOrCool = (id: string) => id === 'heat-main' || id === 'cool-main';
