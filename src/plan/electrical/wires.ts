import type { Home } from '../../home/home';
import { traitsOf } from '../../kinds/route-traits';
import { smallestWire, type WireSize } from '../../physics/wire-size';
import { buysGenerator } from '../../routes/buys-generator';
import { ownGenerator } from '../../routes/kinds/own-generator';
import type { Route } from '../../routes/route';
import { breakerAtLeast } from '../../tables/electrical/breaker-sizes';
import {
  type TerminalColumn,
  type WireMetal,
  wireChoices,
} from '../../tables/electrical/wire-ampacity';
import { practice } from '../../tables/practice-figures';
import { isFixedBattery } from './route-traits';
import { lineVolts } from './service-facts';

export type WireRunId = 'inlet-to-panel' | 'battery-to-panel' | 'panel-to-pump';

/** How the length is known: paced off, assumed, or the depth of the well and so many feet assumed from the panel to its head. */
export type LengthFrom =
  | { readonly code: 'paced-off' | 'assumed' }
  | { readonly code: 'well-depth'; readonly depthTold: boolean; readonly runFt: number };

/** One run of wire with the planning sizes in both metals and both terminal columns. */
export interface WireRun {
  readonly run: WireRunId;
  readonly breakerAmps: number;
  /** What the drop is worked out at, A. */
  readonly loadAmps: number;
  readonly volts: number;
  readonly oneWayFt: number;
  readonly lengthFrom: LengthFrom;
  readonly sizes: readonly WireChoice[];
}

export interface WireChoice {
  readonly metal: WireMetal;
  /** 60 C for NM cable and unmarked terminals up to 100 A; 75 C only where every terminal is marked. */
  readonly columnC: TerminalColumn;
  /** AWG or kcmil; null when no wire of the table does it. */
  readonly size: string | null;
  readonly dropPercent: number | null;
  /** What decides the size. */
  readonly because: 'ampacity' | 'voltage-drop' | 'no-wire';
}

/** Drop aimed at: 3 % of a branch circuit, 5 % in all (NEC notes, recommended). */
const MOST_DROP_PERCENT = practice('aimed-voltage-drop');
const WELL_RUN_FT = practice('well-run-length');

interface Ask {
  readonly run: WireRunId;
  readonly loadAmps: number;
  readonly breakerAmps: number;
  readonly continuous: boolean;
  readonly volts: number;
  readonly oneWayFt: number;
  readonly lengthFrom: LengthFrom;
}

/** Planning wire sizes for what this route and home need: inlet, battery feeder, well. */
export function wireRuns(home: Home, route: Route): WireRun[] {
  const asks = [inlet(home, route), battery(home, route), well(home)];
  return asks.filter((ask) => ask !== null).map(sized);
}

/** What is bought for an inlet gives 240 V; what is there gives its own. */
const voltsOfSet = (home: Home, route: Route): number =>
  buysGenerator(route) ? 240 : (ownGenerator(home)?.volts ?? 240);

function inlet(home: Home, route: Route): Ask | null {
  if (traitsOf[route.kind].connection !== 'inlet' || route.power === null) return null;
  // A set of 120 V has an inlet of its own voltage, where the same watts lose four times the share.
  const volts = traitsOf[route.kind].vehicle ? 120 : voltsOfSet(home, route);
  const loadAmps = Math.min(volts === 120 ? 30 : 50, route.power.continuousWatts / volts);
  const breakerAmps = loadAmps <= 30 ? 30 : 50;
  return {
    run: 'inlet-to-panel',
    loadAmps,
    breakerAmps,
    continuous: false,
    volts,
    ...panelRun(home),
  };
}

function battery(home: Home, route: Route): Ask | null {
  const volts = lineVolts(home);
  if (!isFixedBattery(route) || route.power === null || volts === null) return null;
  const loadAmps = route.power.continuousWatts / volts;
  const breakerAmps = breakerAtLeast(1.25 * loadAmps);
  if (breakerAmps === null) return null;
  return {
    run: 'battery-to-panel',
    loadAmps,
    breakerAmps,
    continuous: true,
    volts,
    ...panelRun(home),
  };
}

function well(home: Home): Ask | null {
  const pump = home.loads.find((load) => load.id === 'well');
  if (pump === undefined) return null;
  const volts = pump.volts === 120 ? 120 : (lineVolts(home) ?? 240);
  const loadAmps = pump.runningVa.value / pump.volts;
  const depthFt = home.facts.is('water-source', 'well')
    ? (home.facts.number('well-depth') ?? 0)
    : 0;
  return {
    run: 'panel-to-pump',
    loadAmps,
    breakerAmps: breakerAtLeast(Math.max(15, 1.25 * loadAmps)) ?? 15,
    continuous: true,
    volts,
    oneWayFt: depthFt + WELL_RUN_FT,
    lengthFrom: {
      code: 'well-depth',
      depthTold: home.facts.told('well-depth'),
      runFt: WELL_RUN_FT,
    },
  };
}

function panelRun({ facts }: Home): Pick<Ask, 'oneWayFt' | 'lengthFrom'> {
  const oneWayFt = facts.number('panel-distance') ?? 50;
  const code = facts.told('panel-distance') ? 'paced-off' : 'assumed';
  return { oneWayFt, lengthFrom: { code } };
}

function sized(ask: Ask): WireRun {
  const metals: readonly WireMetal[] = ['copper', 'aluminum'];
  const columns: readonly TerminalColumn[] = ask.breakerAmps <= 100 ? [60, 75] : [75];
  const sizes = metals.flatMap((metal) => columns.map((column) => choice(ask, metal, column)));
  const { run, breakerAmps, loadAmps, volts, oneWayFt, lengthFrom } = ask;
  return { run, breakerAmps, loadAmps, volts, oneWayFt, lengthFrom, sizes };
}

function choice(ask: Ask, metal: WireMetal, columnC: TerminalColumn): WireChoice {
  const wire: WireSize | null = smallestWire({
    options: wireChoices(metal, columnC),
    breakerAmps: ask.breakerAmps,
    loadAmps: ask.loadAmps,
    continuous: ask.continuous,
    oneWayFt: ask.oneWayFt,
    supplyVolts: ask.volts,
    maxDropPercent: MOST_DROP_PERCENT,
  });
  if (wire === null) {
    return { metal, columnC, size: null, dropPercent: null, because: 'no-wire' };
  }
  return {
    metal,
    columnC,
    size: wire.size,
    dropPercent: wire.drop.percent,
    because: wire.limitedBy,
  };
}
