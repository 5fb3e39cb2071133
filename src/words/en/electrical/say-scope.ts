import type { ScopeCircuit } from '../../../plan/electrical/scope';
import type {
  QuotePoint,
  Range,
  ScopePurpose,
  ScopeRequirement,
  SiteQuestion,
} from '../../../plan/electrical/scope-points';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shownRange } from '../../../quantity/shown';
import { sayOrigin } from '../explain/say-origin';
import { sayLoadName } from '../loads/say-load-name';
import { sayRouteTitle } from '../routes/route-titles';
import { sayTransferTime } from '../say-transfer-time';

const range = ({ low, value, high }: Range, unit: string) => shownRange({ low, value, high }, unit);

/** The job in a line. */
export const sayPurpose = ({ hours, seasons, called }: ScopePurpose): string =>
  `Optional standby: keep the listed loads for ${formatQuantity(hours, 'h')} in ${seasons.join(' and ')}. ${sayRouteTitle(called)}.`;

/** A circuit as an electrician quotes it. */
export function sayCircuit({ called, watts, startVa, how }: ScopeCircuit): {
  name: string;
  watts: string;
  startVa: string;
  how: string;
} {
  return {
    name: called === null ? 'Outlet circuit that may not fail' : sayLoadName(called),
    watts: range(watts, 'W'),
    startVa: startVa === null ? 'no motor' : range(startVa, 'VA'),
    how: how.is === undefined ? how.kind : sayOrigin(how),
  };
}

const known: Readonly<Record<ScopeCircuit['known'], string>> = {
  told: 'told',
  nameplate: 'label',
  table: 'typical',
  formula: 'worked out',
  practice: 'usual',
  assumed: 'assumed',
};

/** Whole from 10 on, as watts are printed everywhere. */
const bare = ({ low, value, high }: Range) => {
  const [least, likely, most] = [low, value, high].map((n) =>
    formatQuantity(n >= 10 ? Math.round(n) : n, '').trim(),
  );
  return least === most ? likely! : `${likely} (${least} to ${most})`;
};

/** A circuit in one line of a table whose heads hold the units. */
export const sayCircuitShort = (circuit: ScopeCircuit) => ({
  name: sayCircuit(circuit).name,
  watts: bare(circuit.watts),
  startVa: circuit.startVa === null ? 'no motor' : bare(circuit.startVa),
  known: known[circuit.known],
});

/** What the equipment must meet. */
export function sayRequirement(requirement: ScopeRequirement): string {
  switch (requirement.code) {
    case 'continuous':
      return `Continuous: ${range(requirement.watts, 'W')} at ${Math.round(requirement.elevationFt)} ft and ${Math.round(requirement.hotF)} °F.`;
    case 'momentary':
      return `Momentary: ${range(requirement.va, 'VA')} with the rest running.`;
    case 'usable-energy':
      return `Usable energy: ${formatQuantity(requirement.kwh, 'kWh')} at five years old${requirement.besideKwh === null ? '' : `, with the ${formatQuantity(requirement.besideKwh, 'kWh')} battery that is there`}.`;
    case 'battery-there':
      return `Battery there, as told: ${formatQuantity(requirement.labelKwh, 'kWh')}, counted as ${formatQuantity(requirement.usableKwh, 'kWh')}. It stays; it is not quoted.`;
    case 'panels-there':
      return `Solar panels there, as told: ${formatQuantity(requirement.kw, 'kW')}. They stay; they are not quoted.`;
    case 'volts-240':
      return 'Voltage: 120/240 V.';
    case 'volts-120':
      return 'Voltage: 120 V, or 120/240 V.';
    case 'gap':
      return `Transfer time: ${sayTransferTime(requirement.transferTime)}.`;
    case 'outdoor-air':
      return `Outdoor air from ${Math.round(requirement.coldF)} to ${Math.round(requirement.hotF)} °F.`;
    case 'transfer-listed':
      return 'Transfer equipment to UL 1008, or an interlock listed for this very panel.';
    case 'storage-listed':
      return 'Storage to UL 9540 with UL 9540A report; cells UL 1973; inverter UL 1741.';
    case 'fixed-generator-listed':
      return 'Generator listed to UL 2200.';
    case 'portable-generator-listed':
      return 'Generator listed to UL 2201 (low carbon monoxide and shut-off).';
    case 'panels-listed':
      return 'Panels listed to UL 61730; rapid shutdown to 690.12.';
  }
}

const points: Readonly<Record<QuotePoint, string>> = {
  'load-calculation': 'The load calculation used (220.82, 220.83 or 220.87) and its result.',
  'exhaust-and-fuel': 'Exhaust path and distance to every opening; fuel line and meter size.',
  'panel-rows': 'Panel row volts at record low, row amps, input limits (690.7, 690.8).',
  'bus-way': 'The 705.12 way chosen and its sum.',
  'battery-facts': 'Least charging temperature, inverter idle W, black start, warranty here.',
  'facts-of-battery-there':
    'Of the battery there: least charging temperature, inverter idle W, black start.',
  'transfer-equipment': 'Transfer equipment: listing, rating, neutral switched or solid, one bond.',
  'circuits-moved': 'Circuits moved, shared neutrals found, effect on GFCI and AFCI breakers.',
  'loads-shed': 'Loads shed, their order, and at empty.',
  'largest-motor': 'The largest motor it starts, shown by a test with the rest running.',
  'permit-and-fees': 'Permit, inspection and utility application: who files and who pays.',
  commissioning: 'A test with the main off and us present; transfer order put at the panel.',
  'price-of-unmet': 'Price of what is not met.',
};

const questions: Readonly<Record<SiteQuestion, string>> = {
  'main-breaker': 'What is the main breaker, and where is it?',
  'bus-rating': 'What is the bus of the panel rated for?',
  'panel-kind': 'Which kind of panel is it, and is it sound?',
  'free-spaces': 'Which spaces are free, and are there two side by side?',
  'circuit-labels': 'Which breaker feeds what?',
  'neutral-bond': 'Neutral bond, ground electrode: where?',
  'shared-neutrals': 'Which circuits share neutrals?',
  'battery-distances': 'How far are doors, windows and cars from the place of the battery?',
  'solar-side': 'On which side of the transfer equipment does the solar connect?',
};

/** What the quote must state. */
export const sayQuotePoint = (point: QuotePoint): string => points[point];

/** What to look at on site. */
export const saySiteQuestion = (ask: SiteQuestion): string => questions[ask];

/** What the household may do itself. */
export const householdMay: readonly string[] = [
  'Open the small door of the panel, read and photograph the labels, count blank plates.',
  'Label breakers by trying them, but none that feeds a medical device.',
  'Place cords, alarms and plug-in packs, and run the monthly test.',
  'Nothing behind the metal cover, nothing at the meter, no cord with two plugs.',
];

export const confirmLocally =
  'Confirm locally: code edition in force; NEC 110.26, 220, 230.85, 250.30, 408, 445, 480, 625, 690, 702, 705, 706, 750; 550.32 for a manufactured home; storage places by the residential and fire code; NFPA 37, 54, 58; flood height. A permit and an inspection are part of the work.';

/** What of this touches a home: the parts of the code by what is planned there. */
export interface Touches {
  readonly generator: 'none' | 'portable' | 'fixed';
  readonly battery: boolean;
  readonly solar: boolean;
  readonly vehicle: boolean;
  readonly pipedOrPropane: boolean;
  readonly manufactured: boolean;
}

/** The same for one home, without what does not touch it. */
export function confirmHere(touches: Touches): string {
  const parallel = touches.battery || touches.solar;
  const articles = [
    '110.26, 220, 230.85, 250.30, 408',
    ...(touches.generator === 'none' ? [] : ['445']),
    ...(touches.battery ? ['480'] : []),
    ...(touches.vehicle ? ['625'] : []),
    ...(touches.solar ? ['690'] : []),
    '702',
    ...(parallel ? ['705'] : []),
    ...(touches.battery ? ['706'] : []),
    '750',
    ...(touches.manufactured ? ['550.32 for a manufactured home'] : []),
  ];
  const fire = [
    ...(touches.generator === 'fixed' ? ['NFPA 37'] : []),
    ...(touches.pipedOrPropane ? ['NFPA 54 and 58'] : []),
    ...(touches.battery ? ['storage places by the residential and fire code'] : []),
    'flood height',
  ];
  return `Confirm locally: code in force; NEC ${articles.join(', ')}; ${fire.join('; ')}. A permit and an inspection are part of the work.`;
}
