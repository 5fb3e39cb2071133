import type { Home, Load } from '../../home/home';
import type {
  ApplianceVa,
  DwellingLoads,
  HeatingCooling,
} from '../../physics/service-load/dwelling';
import { practice } from '../../tables/practice-figures';

/** Which end of each figure is counted: the likely one, or the high one for the careful sum. */
export type End = 'value' | 'high';

/** Nameplate of an electric range when it was not read: the largest that Table 220.55 counts as 8 kVA. */
const RANGE_VA = practice('range-nameplate');
/** Least a dryer counts for, NEC 220.54. */
const DRYER_VA = practice('dryer-least');
/** A household tank heater, the larger usual element. */
const TANK_VA = practice('tank-heater');

const fixedAppliances = [
  'well',
  'waste',
  'sump',
  'water-heater',
  'dishwasher',
  'pool-pump',
  'hot-tub',
  'furnace-gas',
  'furnace-oil',
  'boiler',
  'stairlift',
];
/** Space heating, and what is plugged in: NEC 220.53 brings neither down. */
const neverReduced = ['furnace-gas', 'furnace-oil', 'boiler', 'sump'];
const coolers = ['central-ac', 'second-ac', 'mini-split', 'room-ac', 'evaporative-cooler'];

/** What the dwelling load calculation starts from, VA; nameplates that were not read are assumed and named as such. */
export function dwellingLoads(home: Home, volts: number, end: End): DwellingLoads {
  const { facts, loads } = home;
  const named = (load: Load): ApplianceVa => ({
    name: load.called,
    va: Math.max(leastVa(home, load), Math.round(va(load, end))),
    ...(neverReduced.includes(load.id) && { fastened: false }),
    ...(load.volts === 120 && { onNeutral: true }),
  });
  return {
    floorAreaFt2: facts.number('home-area') ?? practice('usual-floor-area'),
    smallApplianceCircuits: 2,
    laundryCircuits: 1,
    cooking: facts.is('cook-main', 'electric')
      ? [{ name: { code: 'range-assumed' }, va: RANGE_VA }]
      : [],
    dryerVa: facts.has('big-loads', 'electric-dryer') ? DRYER_VA : null,
    appliances: loads.filter((load) => fixedAppliances.includes(load.id)).map(named),
    chargers: loads.filter(isCharger).map(named),
    heatingCooling: heatingCooling(home, end),
    volts,
  };
}

/** Running VA of the largest motor that is not a cooling or heating compressor. */
export function otherMotorVa(home: Home, end: End): number {
  const motors = home.loads.filter(
    (load) => load.startVa !== null && fixedAppliances.includes(load.id),
  );
  return Math.max(0, ...motors.map((load) => va(load, end)));
}

/** What the sums rest on beyond the answers. */
export type DwellingAssumption =
  /** Two kitchen circuits and one for laundry, the least; and heaters as fewer than four controls. */
  | { readonly code: 'least-circuits' | 'few-heater-controls' }
  | { readonly code: 'floor-area'; readonly ft2: number }
  | { readonly code: 'range-label' | 'dryer-label'; readonly va: number };

export function dwellingAssumptions({ facts }: Home): DwellingAssumption[] {
  const made: DwellingAssumption[] = [{ code: 'least-circuits' }];
  if (facts.open('home-area')) made.push({ code: 'floor-area', ft2: facts.number('home-area')! });
  if (facts.is('cook-main', 'electric')) made.push({ code: 'range-label', va: RANGE_VA });
  if (facts.has('big-loads', 'electric-dryer')) made.push({ code: 'dryer-label', va: DRYER_VA });
  if (facts.is('heat-main', 'baseboard')) made.push({ code: 'few-heater-controls' });
  return made;
}

export const isCharger = (load: Load) => load.id === 'ev-charger-240';

const va = (load: Load, end: End) => load.runningVa[end];

/** A tank with an element counts for no less than the usual one, VA. */
function leastVa({ facts }: Home, { id }: Load): number {
  const element = facts.is('water-heater', 'electric-tank', 'heat-pump-tank');
  return id === 'water-heater' && element ? TANK_VA : 0;
}

function heatingCooling(home: Home, end: End): HeatingCooling {
  const sum = (...ids: string[]) =>
    home.loads.filter((l) => ids.includes(l.id)).reduce((total, l) => total + va(l, end), 0);
  const strips = sum('heat-strips');
  const cools = home.facts.is('cool-main', 'heat-pump');
  const pump = sum('heat-pump');
  const backUp = home.facts.is('heat-main', 'heat-pump');
  return {
    coolingVa: sum(...coolers) + (cools ? pump : 0),
    coolingMotorVa: Math.max(cools ? pump : 0, ...coolers.map((id) => sum(id) / unitsOf(home, id))),
    heatPumpVa: pump,
    supplementalVa: backUp ? strips : 0,
    spaceHeatVa: backUp ? 0 : strips,
    spaceHeatControls: 1,
  };
}

/** How many compressors share the load of this id. */
function unitsOf({ facts }: Home, id: string): number {
  return id === 'room-ac' ? Math.max(1, facts.number('room-cool-count') ?? 1) : 1;
}
