import type { Home } from '../../home/home';
import { standbyCapacity } from '../../physics/standby-capacity';
import type { Route } from '../../routes/route';
import type { Connection, ConnectionCapacity, ConnectionWay } from './connection';
import { isWired } from './route-traits';

interface Of {
  readonly route: Route;
  /** Dwelling load by Article 220, VA; null when not worked out. */
  readonly calculatedVa: number | null;
}

/** The eight ways side by side, with the capacity rule of NEC 702.4 in this home's numbers. */
export function connectionsOf(home: Home, given: Of): Connection[] {
  const wired = (way: ConnectionWay, capacity: ConnectionCapacity) =>
    wiredConnection(home, way, capacity);
  const chosen = manualCapacity(given);
  const managed = managedCapacity(given);
  return [
    { way: 'cords', fits: 'possible', against: null, capacity: { code: 'by-the-cord' } },
    wired('interlock-inlet', chosen),
    wired('manual-switch', chosen),
    wired('automatic-whole-house', automaticCapacity(given)),
    wired('sub-panel', chosen),
    wired('load-management', managed),
    wired('at-the-meter', managed),
    wired('charger-inlet', { code: 'held-to-the-generator' }),
  ];
}

function wiredConnection(home: Home, way: ConnectionWay, capacity: ConnectionCapacity): Connection {
  const { facts } = home;
  if (facts.is('home-kind', 'apartment'))
    return { way, fits: 'no', against: 'wiring-of-the-building', capacity };
  const noMain =
    way === 'interlock-inlet' && facts.is('panel-kind', 'split-bus', 'fuses', 'no-main');
  if (noMain) return { way, fits: 'no', against: 'no-main-breaker', capacity };
  return { way, fits: unsettled(home) ? 'ask' : 'possible', against: null, capacity };
}

/** The panel, its owner or its trouble must be settled before anything is wired. */
const unsettled = ({ facts }: Home) =>
  facts.open('main-amps') ||
  facts.open('panel-kind') ||
  facts.open('panel-signs') ||
  (facts.told('panel-signs') && !facts.has('panel-signs', 'none'));

function manualCapacity({ route }: Of): ConnectionCapacity {
  if (route.power === null || !isWired(route)) return { code: 'what-runs-at-one-time' };
  const chosenVa = route.power.runningWatts.high;
  const sourceVa = route.power.continuousWatts;
  const { enough, section } = standbyCapacity({
    sourceVa,
    transfer: { kind: 'manual', chosenVa },
  });
  return { code: 'manual', sourceVa, chosenVa, enough, section };
}

function automaticCapacity({ route, calculatedVa }: Of): ConnectionCapacity {
  if (calculatedVa === null) return { code: 'load-not-worked-out' };
  if (route.power === null || !isWired(route)) return { code: 'whole-load', calculatedVa };
  const sourceVa = route.power.continuousWatts;
  const { enough, section } = standbyCapacity({
    sourceVa,
    transfer: { kind: 'automatic', calculatedVa },
  });
  return { code: 'automatic', sourceVa, calculatedVa, enough, section };
}

function managedCapacity({ route }: Of): ConnectionCapacity {
  if (route.power === null || !isWired(route)) return { code: 'what-the-manager-lets-on' };
  return { code: 'managed', sourceVa: route.power.continuousWatts };
}
