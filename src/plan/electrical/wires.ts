import type { Home } from '../../home/home';
import { traitsOf } from '../../kinds/route-traits';
import { smallestWire, type WireSize } from '../../physics/wire-size';
import { ownGenerator } from '../../routes/kinds/own-generator';
import type { Route } from '../../routes/route';
import { breakerAtLeast } from '../../tables/breaker-sizes';
import { practice } from '../../tables/practice-figures';
import { type TerminalColumn, type WireMetal, wireChoices } from '../../tables/wire-ampacity';
import { isFixedBattery } from './route-traits';
import { lineVolts } from './service-facts';

/** One run of wire with the planning sizes in both metals and both terminal columns. */
export interface WireRun {
  readonly run: string;
  readonly breakerAmps: number;
  /** What the drop is worked out at, A. */
  readonly loadAmps: number;
  readonly volts: number;
  readonly oneWayFt: number;
  readonly lengthFrom: string;
  readonly sizes: readonly WireChoice[];
}

export interface WireChoice {
  readonly metal: WireMetal;
  /** 60 C for NM cable and unmarked terminals up to 100 A; 75 C only where every terminal is marked. */
  readonly columnC: TerminalColumn;
  /** AWG or kcmil; null when no wire of the table does it. */
  readonly size: string | null;
  readonly dropPercent: number | null;
  readonly because: string;
}

/** Drop aimed at: 3 % of a branch circuit, 5 % in all (NEC notes, recommended). */
const MOST_DROP_PERCENT = practice('aimed-voltage-drop');
const WELL_RUN_FT = practice('well-run-length');

interface Ask {
  readonly run: string;
  readonly loadAmps: number;
  readonly breakerAmps: number;
  readonly continuous: boolean;
  readonly volts: number;
  readonly oneWayFt: number;
  readonly lengthFrom: string;
}

/** Planning wire sizes for what this route and home need: inlet, battery feeder, well. */
export function wireRuns(home: Home, route: Route): WireRun[] {
  const asks = [inlet(home, route), battery(home, route), well(home)];
  return asks.filter((ask) => ask !== null).map(sized);
}

function inlet(home: Home, route: Route): Ask | null {
  if (traitsOf[route.kind].connection !== 'inlet' || route.power === null) return null;
  // A set of 120 V has an inlet of its own voltage, where the same watts lose four times the share.
  const volts = traitsOf[route.kind].vehicle ? 120 : (ownGenerator(home)?.volts ?? 240);
  const loadAmps = Math.min(volts === 120 ? 30 : 50, route.power.continuousWatts / volts);
  const breakerAmps = loadAmps <= 30 ? 30 : 50;
  return {
    run: 'Inlet to panel',
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
    run: 'Battery to panel',
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
    run: 'Panel to water pump',
    loadAmps,
    breakerAmps: breakerAtLeast(Math.max(15, 1.25 * loadAmps)) ?? 15,
    continuous: true,
    volts,
    oneWayFt: depthFt + WELL_RUN_FT,
    lengthFrom: `depth ${home.facts.told('well-depth') ? 'as told' : 'assumed'} + ${WELL_RUN_FT} ft assumed from panel to well head`,
  };
}

function panelRun({ facts }: Home): Pick<Ask, 'oneWayFt' | 'lengthFrom'> {
  const oneWayFt = facts.number('panel-distance') ?? 50;
  const lengthFrom = facts.told('panel-distance') ? 'paced off by the household' : 'assumed';
  return { oneWayFt, lengthFrom };
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
    return {
      metal,
      columnC,
      size: null,
      dropPercent: null,
      because: 'no wire of the table does it at this distance',
    };
  }
  return {
    metal,
    columnC,
    size: wire.size,
    dropPercent: wire.drop.percent,
    because: wire.limitedBy,
  };
}
