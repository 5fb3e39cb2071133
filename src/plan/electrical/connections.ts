import type { Home } from '../../home/home';
import { carriesLargestLoad, standbyCapacity } from '../../physics/standby-capacity';
import type { Route } from '../../routes/route';
import { hasGenerator, isWired } from './route-traits';
import { lineVolts } from './service-facts';

/** One way to connect a source to this home. */
export interface Connection {
  readonly way: string;
  readonly fits: 'possible' | 'ask' | 'no';
  readonly says: string;
  readonly capacity: string;
}

interface Of {
  readonly route: Route;
  /** Dwelling load by Article 220, VA; null when not worked out. */
  readonly calculatedVa: number | null;
}

/** The eight ways side by side, with the capacity rule of NEC 702.4 in this home's numbers. */
export function connectionsOf(home: Home, of: Of): Connection[] {
  const apartment = home.facts.is('home-kind', 'apartment');
  const wired = (way: string, says: string, capacity: string): Connection => ({
    way,
    fits: apartment ? 'no' : unsettled(home) ? 'ask' : 'possible',
    says: apartment ? 'The wiring belongs to the building.' : says,
    capacity,
  });
  const chosen = manualCapacity(of);
  const managed = managedCapacity(of);
  return [
    {
      way: 'cords, straight to each thing',
      fits: 'possible',
      says: 'Nothing wired in runs; each cord carries one heavy thing.',
      capacity: 'each cord and outlet carries what is plugged into it',
    },
    {
      ...wired('inlet with an interlock', interlockSays(home), chosen),
      ...interlockFits(home, apartment),
    },
    wired(
      'manual transfer switch',
      'A box of its own, so it does not hang on the kind of panel.',
      chosen,
    ),
    wired(
      'automatic transfer of the whole house',
      'The source must carry everything that is transferred.',
      automaticCapacity(of),
    ),
    wired(
      'sub-panel for the chosen circuits',
      'The circuits that must run move to a panel of their own.',
      chosen,
    ),
    wired('whole house with load management', 'A manager keeps the largest loads off.', managed),
    wired(
      'device at the meter',
      'Only where the utility allows it; nothing is done inside the panel.',
      managed,
    ),
    wired(
      'inlet for a battery charger alone',
      'The generator feeds only the charger, so its neutral never meets the house.',
      'the charger is held to what the generator gives',
    ),
  ];
}

/** The panel, its owner or its trouble must be settled before anything is wired. */
const unsettled = ({ facts }: Home) =>
  facts.open('main-amps') ||
  facts.open('panel-kind') ||
  facts.open('panel-signs') ||
  (facts.told('panel-signs') && !facts.has('panel-signs', 'none'));

function interlockFits({ facts }: Home, apartment: boolean): { fits?: Connection['fits'] } {
  if (apartment) return {};
  return facts.is('panel-kind', 'split-bus', 'fuses', 'no-main') ? { fits: 'no' } : {};
}

function interlockSays({ facts }: Home): string {
  return facts.is('panel-kind', 'split-bus', 'fuses', 'no-main')
    ? 'This kind of panel has no main breaker an interlock could slide against.'
    : 'Only a kit listed for exactly this panel counts (702.5, 110.3(B)); the breaker it feeds back through needs a hold-down (408.36(D)).';
}

function manualCapacity({ route }: Of): string {
  if (route.power === null || !isWired(route))
    return 'enough for all that is meant to run at one time (702.4(A)(1))';
  const chosenVa = route.power.runningWatts.high;
  const { enough, section } = standbyCapacity({
    sourceVa: route.power.continuousWatts,
    transfer: { kind: 'manual', chosenVa },
  });
  return `${kva(route.power.continuousWatts)} for ${kva(chosenVa)} meant to run at one time: ${enough ? 'enough' : 'not enough, so fewer at a time'} (${section})`;
}

function automaticCapacity({ route, calculatedVa }: Of): string {
  if (calculatedVa === null)
    return 'the whole calculated load, which is not worked out here (702.4(A)(2)(a))';
  if (route.power === null || !isWired(route))
    return `the whole calculated load, ${kva(calculatedVa)} (702.4(A)(2)(a))`;
  const { enough, section } = standbyCapacity({
    sourceVa: route.power.continuousWatts,
    transfer: { kind: 'automatic', calculatedVa },
  });
  return `${kva(route.power.continuousWatts)} for a calculated ${kva(calculatedVa)}: ${enough ? 'enough' : 'not enough without load management'} (${section})`;
}

function managedCapacity({ route }: Of): string {
  if (route.power === null || !isWired(route))
    return 'the most the manager lets on (702.4(A)(2)(b))';
  return `the manager must hold the house to ${kva(route.power.continuousWatts)} (702.4(A)(2)(b))`;
}

const kva = (va: number) => `${Math.round(va / 100) / 10} kVA`;

/** A stand-alone source may not be smaller than the largest single load left connected, NEC 710.15(A). */
export function largestLoadPoint(home: Home, route: Route): string | null {
  if (route.power === null || !isWired(route)) return null;
  const left = home.loads.filter((load) => !load.offInOutage || load.rank !== 'wait');
  const carries = carriesLargestLoad({
    sourceVa: route.power.continuousWatts,
    loadsVa: left.map((l) => l.runningVa.value),
  });
  const largest = [...left].sort((a, b) => b.runningVa.value - a.runningVa.value)[0];
  if (largest === undefined) return null;
  return `Largest single load: ${largest.name}, ${kva(largest.runningVa.value)}. ${carries ? 'The source carries it' : 'It is more than the source gives, so it must not stay connected'} (710.15(A)).`;
}

/** Neutral, bond, GFCI and flame-sensing points for this home and route. */
export function neutralPoints(home: Home, route: Route): string[] {
  const { facts } = home;
  const generator = hasGenerator(route) && isWired(route);
  const points: string[] = [];
  if (generator) {
    points.push(
      'One neutral-to-ground bond in all: at the service when the neutral stays solid; at the source, as a separately derived system, when the transfer switch switches the neutral (250.30).',
      'A portable generator with a bonded neutral and GFCI outlets trips behind a solid neutral: then the transfer switches the neutral, or an electrician sets the generator to floating as its maker allows.',
    );
    if (!facts.told('engine-neutral')) {
      points.push(
        'The neutral of the generator is not known: it feeds no house wiring until an electrician has found out.',
      );
    }
  }
  if (facts.is('heat-main', 'gas-furnace', 'oil-furnace', 'boiler')) {
    points.push(
      'The furnace or boiler proves its flame by a current to ground: with a floating neutral it may lock out. A bonded neutral on the source cures it.',
    );
  }
  if (home.demand.must.needs240 && facts.is('engine-volts', 'v120')) {
    points.push('A source of 120 V cannot run the 240 V loads named, however strong it is.');
  }
  if (facts.is('engine-volts', 'v120') && generator) {
    points.push(
      'One 120 V source on both legs adds the currents in every shared neutral instead of taking them off: circuits that share a neutral must be found and kept off it.',
    );
  }
  if (lineVolts(home) === 208) {
    points.push(
      'At 120/208 V the neutral of two legs carries about as much as a leg: it is counted as loaded.',
    );
  }
  return points;
}
