import type { Home } from '../../home/home';
import { type BusbarRoom, busbarRoom } from '../../physics/busbar-room';
import { largestSetPointAmps } from '../../physics/energy-management';
import type { Route } from '../../routes/route';
import { type BusbarRouteId, busbarRoutes } from '../../tables/electrical/busbar-routes';
import { serviceConductorFor } from '../../tables/electrical/service-conductors';
import { isFixedBattery, isWired } from './route-traits';
import { busAmps, lineVolts, mainAmps } from './service-facts';

/** One way of NEC 705.12 with the room it leaves. */
export interface BusbarWay {
  readonly way: BusbarRouteId;
  /** Where each edition has it; null where it has not. */
  readonly sections: {
    readonly edition2017: string | null;
    readonly edition2020: string | null;
    readonly edition2023: string | null;
  };
  /** Room for 1.25 x source current, A; null where the electrician has to find it. */
  readonly roomAmps: number | null;
  readonly fits: 'yes' | 'no' | 'ask';
}

export interface PanelFit {
  /** 1.25 x the source's current, A; null without a source on the panel. */
  readonly sourceAt125Amps: number | null;
  readonly ways: readonly BusbarWay[];
  readonly traps: readonly PanelTrap[];
  readonly notes: readonly PanelNote[];
}

/** What about the panel itself stands in the way. */
export type PanelTrap =
  | {
      readonly code:
        | 'split-bus'
        | 'fuses'
        | 'no-main-here'
        | 'panel-kind-not-known'
        | 'heaters-at-208';
    }
  | { readonly code: 'main-over-bus'; readonly mainAmps: number; readonly busAmps: number };

/** Room, conductors and control of this panel. */
export type PanelNote =
  | { readonly code: 'spaces-not-counted' }
  | { readonly code: 'room-for-two-poles' | 'no-room-for-two-poles'; readonly spaces: number }
  | {
      readonly code: 'service-conductors';
      readonly mainAmps: number;
      readonly copper: string;
      readonly aluminum: string;
    }
  | { readonly code: 'most-set-point'; readonly amps: number };

/** How the route's source fits this panel: the sums of 705.12, spaces, and the traps of the panel itself. */
export function panelFit(home: Home, route: Route): PanelFit {
  const volts = lineVolts(home);
  const source = isFixedBattery(route) && route.power !== null && volts !== null;
  const sourceAt125Amps = source ? (1.25 * route.power!.continuousWatts) / volts : null;
  return {
    sourceAt125Amps,
    ways: sourceAt125Amps === null ? [] : busbarWays(home, sourceAt125Amps),
    traps: traps(home),
    notes: isWired(route) ? notes(home) : [],
  };
}

/** The ways of 705.12 for a source of this size. Not-known ratings give 'ask', never a number. */
export function busbarWays(home: Home, sourceAt125Amps: number): BusbarWay[] {
  const rooms = knownRooms(home);
  return busbarRoutes.rows.map((row) => {
    const room = rooms.find((r) => r.route === row.route)?.sourceAt125Amps ?? null;
    const fits = room === null ? 'ask' : room >= sourceAt125Amps ? 'yes' : 'no';
    return {
      way: row.route,
      sections: {
        edition2017: row.section2017,
        edition2020: row.section2020,
        edition2023: row.section2023,
      },
      roomAmps: room,
      fits,
    };
  });
}

function knownRooms(home: Home): BusbarRoom[] {
  const [main, bus] = [mainAmps(home), busAmps(home)];
  const existing = existingSourcesAmps(home);
  if (main === null || bus === null || existing === null) return [];
  const of = { busbarAmps: bus, mainAmps: main, existingSourcesAt125Amps: existing };
  const at = (position: 'opposite-end' | 'center-fed-end') =>
    busbarRoom({ ...of, position, otherBreakersAmps: null });
  const [opposite, center] = [at('opposite-end'), at('center-fed-end')];
  return [...opposite, ...center.slice(1)];
}

/** 1.25 x the current of solar already there, A; null when that is not known. */
function existingSourcesAmps(home: Home): number | null {
  const { facts } = home;
  if (!facts.told('own-sources')) return null;
  const volts = lineVolts(home);
  if (volts === null || facts.has('own-sources', 'home-battery')) return null;
  if (!facts.has('own-sources', 'solar')) return 0;
  return facts.told('solar-kw') ? (1.25 * 1000 * facts.number('solar-kw')!) / volts : null;
}

function traps(home: Home): PanelTrap[] {
  const { facts } = home;
  const [mainA, busA] = [mainAmps(home), busAmps(home)];
  const found: PanelTrap[] = [];
  if (facts.is('panel-kind', 'split-bus')) found.push({ code: 'split-bus' });
  if (facts.is('panel-kind', 'fuses')) found.push({ code: 'fuses' });
  if (facts.is('panel-kind', 'no-main')) found.push({ code: 'no-main-here' });
  if (facts.open('panel-kind')) found.push({ code: 'panel-kind-not-known' });
  if (mainA !== null && busA !== null && mainA > busA)
    found.push({ code: 'main-over-bus', mainAmps: mainA, busAmps: busA });
  if (facts.is('supply-volts', 'v120-208')) found.push({ code: 'heaters-at-208' });
  return found;
}

function notes(home: Home): PanelNote[] {
  const main = mainAmps(home);
  if (main === null) return [roomNote(home)];
  const amps = largestSetPointAmps({ ratingAmps: main, hundredPercentRated: false });
  const wire = serviceConductorFor(main);
  return [
    ...(wire === null
      ? []
      : [
          {
            code: 'service-conductors',
            mainAmps: main,
            copper: wire.copper,
            aluminum: wire.aluminum,
          } as const,
        ]),
    roomNote(home),
    { code: 'most-set-point', amps },
  ];
}

/** A two-pole breaker needs two spaces side by side. */
function roomNote({ facts }: Home): PanelNote {
  const spaces = facts.told('panel-spaces') ? facts.number('panel-spaces') : null;
  if (spaces === null) return { code: 'spaces-not-counted' };
  return { code: spaces >= 2 ? 'room-for-two-poles' : 'no-room-for-two-poles', spaces };
}
