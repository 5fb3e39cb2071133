import { nightWithoutHeat } from '../../../plan/night-without-heat';
import type { Plan } from '../../../plan/plan';
import type { Words } from '../../../words/words';

/** No heat or no cooling, where that harms, is said before what is bought. */
export function comfort(
  { comfortLost: { heat, cool }, home, lifeFirst, advice }: Plan,
  words: Words,
): string[] {
  const say = words.household.frontPage;
  const night = nightWithoutHeat(home, advice.route);
  const because = (lost: readonly string[], building: string) => {
    const here = home.loads.filter(({ id }) => lost.includes(id));
    if (here.length === 0) return building;
    const forOneRoom = here.some((load) => load.onlyInOutage === true);
    return say.notRun(
      words.loadNames(
        home,
        here.map(({ id }) => id),
      ),
      forOneRoom,
    );
  };
  // Who leaves when the power fails waits for no thermometer.
  const staysHere = home.lifeSupport === 'no' || lifeFirst?.leaveAtOnce !== true;
  // The ways on stand on the page only where nobody's life hangs on a device.
  const room = lifeFirst?.told ? null : (advice.waysOn?.oneRoom ?? null);
  const near = room?.keepsRoom ? room : null;
  return [
    ...(heat.length > 0
      ? [say.noHeat(because(heat, say.buildingHeats), staysHere, near?.heats === true)]
      : []),
    ...(night === null ? [] : [words.noHeatAtNight(night)]),
    ...(cool.length > 0 ? [say.noCooling(because(cool, ''), staysHere, near?.cools === true)] : []),
  ];
}
