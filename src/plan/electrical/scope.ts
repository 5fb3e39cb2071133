import type { Home, Load } from '../../home/home';
import { hasFixedGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import { formatQuantity, formatRange } from '../../quantity/format-quantity';
import type { Route } from '../../routes/route';
import { sayGap } from '../../words/en/say-gap';
import { hasGenerator, isFixedBattery, isWired } from './route-traits';

/** A circuit of the route advised, as an electrician quotes it; medical loads are named by their rank only. */
export interface ScopeCircuit {
  readonly name: string;
  readonly volts: number;
  readonly watts: string;
  readonly startVa: string;
  readonly rank: 'must' | 'optional';
  readonly how: string;
}

export interface Scope {
  readonly purpose: string;
  readonly circuits: readonly ScopeCircuit[];
  readonly requirements: readonly string[];
  readonly quotePoints: readonly string[];
  readonly siteQuestions: readonly string[];
  readonly householdMay: readonly string[];
  readonly confirmLocally: string;
}

/** What an electrician needs to quote this route without coming twice. Names no maker and no person's illness. */
export function scopeOf(home: Home, route: Route): Scope {
  return {
    purpose: purpose(home, route),
    circuits: home.loads.filter((load) => route.carries.includes(load.id)).map(circuit),
    requirements: isWired(route) ? requirements(home, route) : [],
    quotePoints: isWired(route) ? quotePoints(home, route) : [],
    siteQuestions: siteQuestions(home, route),
    householdMay,
    confirmLocally:
      'Confirm locally: code edition in force; NEC 110.26, 220, 230.85, 250.30, 408, 445, 480, 625, 690, 702, 705, 706, 750; 550.32 for a manufactured home; storage places by the residential and fire code; NFPA 37, 54, 58; flood height. A permit and an inspection are part of the work.',
  };
}

function purpose(home: Home, route: Route): string {
  const hours = formatQuantity(home.goalHours.value, 'h');
  return `Optional standby: keep the listed loads for ${hours} in ${home.goalSeasons.join(' and ')}. ${route.title}.`;
}

function circuit(load: Load): ScopeCircuit {
  const { runningWatts: w, startVa: va } = load;
  const medical = load.life || load.restsOn.includes('medical-devices');
  return {
    name: medical ? 'Outlet circuit that may not fail' : load.name,
    volts: load.volts,
    watts: formatRange(w.low, w.value, w.high, 'W'),
    startVa: va === null ? 'no motor' : formatRange(va.low, va.value, va.high, 'VA'),
    rank: load.rank === 'must' ? 'must' : 'optional',
    // The label of a device's figure names the device.
    how: medical ? w.source.kind : w.source.label,
  };
}

function requirements(home: Home, route: Route): string[] {
  const { power } = route;
  const made: string[] = [];
  if (power !== null) {
    const { runningWatts: w, startDemandVa: va } = power;
    made.push(
      `Continuous: ${formatRange(w.low, w.value, w.high, 'W')} at ${Math.round(home.site.elevationFt.value)} ft and ${Math.round(home.site.hotF)} °F.`,
      `Momentary: ${formatRange(va.low, va.value, va.high, 'VA')} with the rest running, shown by a test.`,
    );
  }
  if (route.usableKwh !== null)
    made.push(`Usable energy: ${formatQuantity(route.usableKwh, 'kWh')} at five years old.`);
  made.push(`Voltage: ${home.demand.must.needs240 ? '120/240 V' : '120 V, or 120/240 V'}.`);
  made.push(`Gap when the grid fails: ${sayGap(route.gap)}.`);
  made.push(`Outdoor air from ${Math.round(home.site.coldF)} to ${Math.round(home.site.hotF)} °F.`);
  return [...made, ...listings(route)];
}

/** Listing standards by number: NRTL marks are asked for, not brands. */
function listings(route: Route): string[] {
  const made = [
    'Transfer equipment listed to UL 1008, or an interlock listed for exactly this panel.',
  ];
  if (isFixedBattery(route))
    made.push(
      'Storage listed to UL 9540, cells to UL 1973, inverter to UL 1741, with the UL 9540A report.',
    );
  if (hasGenerator(route)) {
    made.push(
      hasFixedGenerator(traitsOf[route.kind])
        ? 'Generator listed to UL 2200.'
        : 'Portable generator listed to UL 2201 (low carbon monoxide and shut-off).',
    );
  }
  if (route.solarKw !== null) made.push('Panels listed to UL 61730; rapid shutdown to 690.12.');
  return made;
}

function quotePoints(home: Home, route: Route): string[] {
  const all = [
    'The load calculation used (220.82, 220.83 or 220.87) and its result.',
    'Transfer equipment: listing, rating, neutral switched or solid, and where the one bond is.',
    'Circuits moved, shared neutrals found, effect on GFCI and AFCI breakers.',
    'Loads shed, in which order, and what happens at empty.',
    'The largest motor it starts, shown by a test with the rest running.',
    'Permit, inspection and utility application: who files and who pays.',
    'A commissioning test with the main off and the household present; the transfer order written at the panel.',
    'Price of anything asked here that is not met.',
  ];
  if (isFixedBattery(route)) {
    all.splice(
      1,
      0,
      'The 705.12 way chosen and its sum.',
      'Least charging temperature, inverter idle watts, black start, warranty at this site.',
    );
  }
  if (route.solarKw !== null || home.facts.has('own-sources', 'solar')) {
    all.splice(
      1,
      0,
      'Volts of each row of panels at the record low, and amps of the rows, against what the input takes (690.7, 690.8).',
    );
  }
  if (hasGenerator(route))
    all.splice(1, 0, 'Exhaust path and distance to every opening; fuel line and meter size.');
  return all;
}

function siteQuestions({ facts }: Home, route: Route): string[] {
  if (!isWired(route)) return [];
  const asks: [boolean, string][] = [
    [facts.open('main-amps'), 'What is the main breaker, and where is it?'],
    [facts.open('panel-bus'), 'What is the bus of the panel rated for?'],
    [facts.open('panel-kind'), 'Which kind of panel is it, and is it sound?'],
    [facts.open('panel-spaces'), 'Which spaces are free, and are there two side by side?'],
    [facts.open('panel-map') || !facts.is('panel-map', 'all'), 'Which breaker feeds what?'],
    [true, 'Where is the one neutral-to-ground bond, and is there a ground electrode?'],
    [true, 'Do chosen circuits share a neutral?'],
    [isFixedBattery(route), 'How far are doors, windows and cars from the place of the battery?'],
    [
      facts.has('own-sources', 'solar'),
      'On which side of the transfer equipment does the solar connect?',
    ],
  ];
  return asks.filter(([yes]) => yes).map(([, ask]) => ask);
}

const householdMay: readonly string[] = [
  'Open the small door of the panel, read and photograph the labels, count blank plates.',
  'Label breakers by trying them, but none that feeds a medical device.',
  'Place cords, alarms and plug-in packs, and run the monthly test.',
  'Nothing behind the metal cover, nothing at the meter, no cord with two plugs.',
];
