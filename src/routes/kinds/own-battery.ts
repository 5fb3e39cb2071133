import type { Home } from '../../home/home';
import { ownSolarKw } from '../../home/solar/own-solar';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { onceMade } from '../../quantity/once-made';
import { goalHours, goalNet, hoursFrom, longestCounted, sizeFor } from '../battery-hours';
import { owned, part } from '../costs';
import { fitPower } from '../fit-power';
import { cannot, makeRoute } from '../make-route';
import type { Note } from '../note';
import { type OwnBattery, ownFixedBattery } from '../own-battery';
import { ownPanelIfs, ownPanelParts } from '../own-panels';
import { alwaysOff, loadsOf } from '../pick-loads';
import type { Route } from '../route';
import type { If } from '../stops/condition';
import { batteryPlaceStops, wiringIfs, wiringStops } from '../stops/stops';
import { transferTime } from '../transfer-time';
import { lastingOf } from './fixed-battery';
import { sizedByYears } from './fixed-battery-size';

/** The battery that is fixed to the house already, with the panels that are: nothing is bought but what it lacks. */
export function ownBatteryRoute(home: Home, drawn: SyntheticYears): Route | null {
  const own = ownFixedBattery(home);
  if (own === null) return null;
  const backed = backsUp(home);
  // What is there already is held to the same: a sound panel, and a place that the rules allow.
  const stops = [...wiringStops(home), ...batteryPlaceStops(home)];
  if (stops.length > 0) return cannot('own-battery', stops);
  const fitted = fitPower({
    loads: loadsOf(home, ['must']),
    seasons: home.goalSeasons,
    steps: [own],
    startEnd: 'high',
    maySoftStart: true,
    source: 'battery-there',
  });
  if (fitted === null || own.usableKwh <= 0) {
    return cannot('own-battery', [{ code: 'own-battery-too-weak' }]);
  }
  const solarKw = ownSolarKw(home.facts);
  const nets = onceMade(() =>
    goalHours(home, drawn, fitted.carried).map((hours) => ({
      pieces: hours.pieces,
      netKwh: goalNet(hours, own.watts / 1000, solarKw),
    })),
  );
  const by = (name: string) => [
    name,
    ...home.goalSeasons,
    longestCounted(home),
    own.watts,
    solarKw,
  ];
  const size = drawn.counted(
    fitted.carried,
    [...by('own-storage'), Math.round(home.goalHours.value)],
    () => sizeFor(home, nets()),
  );
  const asked = sizedByYears(home) ? size.nineYearsInTenKwh : size.nineOutagesInTenKwh;
  const { nameplateKwh, usableKwh } = own;
  const hours = onceMade(() =>
    drawn.counted(fitted.carried, [...by('own-hours'), usableKwh], () =>
      hoursFrom(nets(), usableKwh),
    ),
  );
  const reaches = usableKwh >= asked;
  return makeRoute('own-battery', {
    ifs: [
      ...(backed ? [] : [NOT_BACKED, ...wiringIfs(home)]),
      ...reserveIfs(home),
      ...ownPanelIfs(home),
    ],
    carries: fitted.carried.map((load) => load.id),
    leavesOut: [...fitted.leftOut, ...alwaysOff(home)],
    power: {
      continuousWatts: own.watts,
      startVa: own.startVa,
      runningWatts: fitted.demand.runningWatts,
      startDemandVa: fitted.demand.startVa,
    },
    nameplateKwh,
    usableKwh,
    solarKw: solarKw > 0 ? solarKw : null,
    sizeByOdds: size,
    transferTime: transferTime('by-itself'),
    lasting: lastingOf(home, { nameplateKwh, usableKwh, solarKw, size, hours, reaches }),
    parts: [
      owned({ code: 'own-battery', kwh: nameplateKwh }, 'battery', nameplateKwh),
      ...(backed ? [] : [part('backup-subpanel'), part('permit')]),
      ...(fitted.softStarter ? [part('soft-starter')] : []),
      ...ownPanelParts(home),
    ],
    notes: notesOf(home, own),
  });
}

export const NOT_BACKED: If = 'backed-up-shown';

/** Seen to run circuits or the house with the grid off; not tried counts as no. */
export function backsUp({ facts }: Home): boolean {
  return facts.told('battery-backup') && facts.is('battery-backup', 'circuits', 'house');
}

/** Below this share kept, the plan asks for more before it counts on a full battery. */
const FULL_SHARE = 0.9;

export function reserveIfs({ facts }: Home): If[] {
  const kept = facts.number('battery-reserve') ?? 0;
  if (kept >= 100 * FULL_SHARE) return [];
  return [{ code: 'reserve-full', keptPercent: facts.told('battery-reserve') ? kept : null }];
}

function notesOf({ facts }: Home, own: OwnBattery): Note[] {
  const kept = (facts.number('battery-reserve') ?? 0) / 100;
  const notes: Note[] = [
    {
      code: 'counted-at-age',
      years: own.ageYears,
      usableKwh: own.usableKwh,
      ofKwh: own.nameplateKwh,
    },
  ];
  if (kept < FULL_SHARE) {
    notes.push({ code: 'only-what-it-keeps', kwh: own.usableKwh * kept });
  }
  return notes;
}
