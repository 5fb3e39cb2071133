import type { Home, Load, Season } from '../home/home';
import { AWAKE } from '../home/loads/awake';
import { wasAskedAbout } from '../home/loads/load-told';
import { inSentence, listOf } from '../words/en/list-of';

const clock = (hour: number) =>
  `${((hour + 11) % 12) + 1} ${hour < 12 ? 'in the morning' : 'in the evening'}`;

/** Our own caution: never one while everybody sleeps. */
export const AWAKE_WORDS = `a plug-in heater runs only while somebody is awake, counted from ${clock(AWAKE.from)} to ${clock(AWAKE.until)}, and never while everybody sleeps`;

/** What one warm or cool room changes, in a sentence; empty where the whole home is heated and cooled as ever. */
export function oneRoomWords({ facts, loads, goalSeasons }: Home): string[] {
  if (!facts.is('one-room', 'yes')) return [];
  const off = loads.filter(
    (load) =>
      load.offInOutage &&
      wasAskedAbout(facts, load) &&
      load.restsOn.some(isHeatOrCool) &&
      goalSeasons.some((season) => worksIn[season]?.includes(load.follows)),
  );
  if (off.length === 0) return [];
  const named = listOf([...new Set(off.map((load) => `the ${inSentence(load.name)}`))]);
  const said = facts.told('one-room') ? 'You said that one room is enough' : 'We count on one room';
  const night = loads.some((load) => load.awakeOnly && load.rank === 'must')
    ? [`For one room ${AWAKE_WORDS}.`]
    : [];
  return [`${said}, so ${named} ${off.length > 1 ? 'stay' : 'stays'} off in an outage.`, ...night];
}

/** What heats is of use in winter, what cools in summer. */
const worksIn: Partial<Record<Season, readonly Load['follows'][]>> = {
  winter: ['cold', 'both'],
  summer: ['heat', 'both'],
};

const isHeatOrCool = (id: string) => id === 'heat-main' || id === 'cool-main';
