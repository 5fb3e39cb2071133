import type { Home } from '../../home/home';
import { roofDoubt } from '../../home/solar/roof';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import { type Figure, figure } from '../../quantity/figure';
import { formula } from '../../quantity/figure-arithmetic';
import { onceMade } from '../../quantity/once-made';
import { powerSteps, solarStepsKw } from '../../tables/generic-steps';
import { longestCounted } from '../battery-hours';
import { type Fitted, fitPower, powerOf } from '../fit-power';
import { cannot, lasts, makeRoute } from '../make-route';
import type { Note } from '../note';
import { ownFixedBattery } from '../own-battery';
import { ownPanelIfs } from '../own-panels';
import { alwaysOff, loadsOf } from '../pick-loads';
import type { Lasting, Route } from '../route';
import { oneSize, type SizedKind } from '../sized';
import type { If } from '../stops/condition';
import type { Stop } from '../stops/stop';
import { batteryPlaceIfs, batteryPlaceStops, wiringIfs, wiringStops } from '../stops/stops';
import { leaveOutTooMuch } from '../too-much-energy';
import { transferTime } from '../transfer-time';
import {
  type Chosen,
  choose,
  everySize,
  partsOf,
  sizedByYears,
  sunOptions,
  type Variant,
  withHours,
} from './fixed-battery-size';

const onCircuits: Variant = {
  kind: 'battery-circuits',
  ranks: () => ['must'],
  solar: false,
};
const wholeHouse: Variant = {
  kind: 'battery-whole',
  ranks: (home) =>
    home.facts.is('goal-scope', 'normal') ? ['must', 'good', 'wait'] : ['must', 'good'],
  solar: false,
};
const withSolar: Variant = {
  kind: 'battery-solar',
  ranks: () => ['must'],
  solar: true,
};

export const batteryCircuits = (home: Home, drawn: SyntheticYears) =>
  fixed(home, drawn, onCircuits);
export const batteryWhole = (home: Home, drawn: SyntheticYears) => fixed(home, drawn, wholeHouse);
export const batterySolar = (home: Home, drawn: SyntheticYears) => fixed(home, drawn, withSolar);

const NOT_COUNTED = { low: 0, value: 0, high: 0 };

function fixed(home: Home, drawn: SyntheticYears, variant: Variant): SizedKind {
  const stops = [
    ...wiringStops(home),
    ...batteryPlaceStops(home),
    ...(variant.solar ? roofStops(home, drawn) : []),
  ];
  if (stops.length > 0) return oneSize(cannot(variant.kind, stops));
  const wanted = leaveOutTooMuch(home, loadsOf(home, variant.ranks(home)), variant.solar);
  const found = fitPower({
    loads: wanted.loads,
    seasons: home.goalSeasons,
    steps: powerSteps('inverter'),
    startEnd: 'high',
    maySoftStart: true,
    source: 'home-inverter',
  });
  if (found === null) return oneSize(cannot(variant.kind, [{ code: 'no-inverter-starts-it' }]));
  const fitted = { ...found, leftOut: [...wanted.leftOut, ...found.leftOut] };
  const options = sunOptions(home, drawn, variant, fitted);
  const describeAs = (chosen: Chosen) => describe(home, variant, fitted, chosen);
  return {
    route: describeAs(choose(home, variant, fitted, options)),
    sizes: () =>
      everySize(home, options).map((size) => ({
        route: describeAs({ ...size, hours: () => NOT_COUNTED }),
        whole: () => describeAs(withHours(size)),
      })),
  };
}

function roofStops({ facts }: Home, { roof }: SyntheticYears): Stop[] {
  if (roof === null) {
    if (facts.told('roof-face')) return [{ code: 'roof-none' }];
    const open = facts.applies('roof-face') || !facts.told('home-tenure');
    return [{ code: open ? 'roof-unknown' : 'roof-of-another' }];
  }
  if (roof.areaFt2 === 0) return [{ code: 'roof-full-or-unknown' }];
  const least = solarStepsKw()[0]!;
  return roof.roomKw < least ? [{ code: 'roof-too-small', roomKw: roof.roomKw }] : [];
}

function describe(home: Home, variant: Variant, fitted: Fitted, chosen: Chosen): Route {
  return makeRoute(variant.kind, {
    ifs: [
      ...wiringIfs(home),
      ...batteryPlaceIfs(home),
      'utility-agrees',
      ...ownPanelIfs(home),
      ...besideOwn(home),
      ...(variant.solar ? solarIfs(home) : []),
    ],
    carries: fitted.carried.map((load) => load.id),
    leavesOut: [...fitted.leftOut, ...alwaysOff(home)],
    power: powerOf(fitted),
    nameplateKwh: chosen.nameplateKwh,
    usableKwh: chosen.usableKwh,
    solarKw: chosen.solarKw > 0 ? chosen.solarKw : null,
    sizeByOdds: chosen.size,
    transferTime: transferTime('by-itself'),
    lasting: lastingOf(home, chosen),
    parts: partsOf(home, variant, fitted, chosen.nameplateKwh, chosen.solarKw),
    notes: notesOf(home, fitted, chosen),
  });
}

/** A battery beside the one that is there. */
export function besideOwn(home: Home): If[] {
  return ownFixedBattery(home) === null ? [] : ['works-with-the-old-one'];
}

function solarIfs(home: Home): If[] {
  const doubt = roofDoubt(home.facts);
  return doubt === null
    ? ['roof-checked']
    : [{ code: 'roof-measured-again', ...doubt }, 'roof-checked'];
}

/** How long it lasts; the hours are counted when they are looked at. */
export function lastingOf(home: Home, chosen: Chosen): Lasting {
  const counted = onceMade(() => countedLasting(home, chosen));
  return {
    get hours() {
      return counted().hours;
    },
    reachesGoal: chosen.reaches,
    get how() {
      return counted().how;
    },
  };
}

function countedLasting(home: Home, chosen: Chosen): Lasting {
  const inHours = chosen.hours();
  const hours: Figure = figure({
    ...inHours,
    unit: 'h',
    is: 'battery-hours',
    source: {
      ...formula(
        'every-start',
        [],
        [{ of: 'weather', ref: 'TMY3 statistics (NREL/TP-581-43156)' }],
      ),
      ends: 'one-start-in-ten',
    },
  });
  const byYears = sizedByYears(home);
  const { nineOutagesInTenKwh, nineYearsInTenKwh } = chosen.size;
  const longest = longestCounted(home);
  return lasts(hours, chosen.reaches, {
    code: 'full-battery',
    atLeastHours: inHours.value >= longest ? longest : null,
    byYears,
    neededKwh: byYears ? nineYearsInTenKwh : nineOutagesInTenKwh,
    goalHours: home.goalHours.value,
  });
}

function notesOf(home: Home, fitted: Fitted, chosen: Chosen): Note[] {
  const seasons = home.goalSeasons.length > 1 ? 'any' : home.goalSeasons[0]!;
  const notes: Note[] = [
    { code: 'nine-years-in-ten', seasons, kwh: chosen.size.nineYearsInTenKwh },
    'counted-five-years-old',
  ];
  if (sizedByYears(home)) {
    notes.unshift('sized-for-life');
  }
  if (fitted.softStarter) notes.push('soft-starter-counted');
  return notes;
}
