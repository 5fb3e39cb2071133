import type { Home } from '../../home/home';
import { type BusbarRoom, busbarRoom } from '../../physics/busbar-room';
import { largestSetPointAmps } from '../../physics/energy-management';
import type { Route } from '../../routes/route';
import { busbarRoutes } from '../../tables/busbar-routes';
import { serviceConductorFor } from '../../tables/service-conductors';
import { isFixedBattery, isWired } from './route-traits';
import { busAmps, lineVolts, mainAmps } from './service-facts';

/** One way of NEC 705.12 with the room it leaves. */
export interface BusbarWay {
  readonly way: string;
  /** Where each edition has it. */
  readonly sections: {
    readonly edition2017: string;
    readonly edition2020: string;
    readonly edition2023: string;
  };
  /** Room for 1.25 x source current, A; null where the electrician has to find it. */
  readonly roomAmps: number | null;
  readonly fits: 'yes' | 'no' | 'ask';
}

export interface PanelFit {
  /** 1.25 x the source's current, A; null without a source on the panel. */
  readonly sourceAt125Amps: number | null;
  readonly ways: readonly BusbarWay[];
  readonly traps: readonly string[];
  readonly notes: readonly string[];
}

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

const NOWHERE = 'not in this edition';

/** The ways of 705.12 for a source of this size. Not-known ratings give 'ask', never a number. */
export function busbarWays(home: Home, sourceAt125Amps: number): BusbarWay[] {
  const rooms = knownRooms(home);
  return busbarRoutes.rows.map((row) => {
    const room = rooms.find((r) => r.route === row.route)?.sourceAt125Amps ?? null;
    const fits = room === null ? 'ask' : room >= sourceAt125Amps ? 'yes' : 'no';
    return {
      way: row.words,
      sections: {
        edition2017: row.section2017 ?? NOWHERE,
        edition2020: row.section2020 ?? NOWHERE,
        edition2023: row.section2023 ?? NOWHERE,
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

function traps(home: Home): string[] {
  const { facts } = home;
  const [main, bus] = [mainAmps(home), busAmps(home)];
  const found: string[] = [];
  if (facts.is('panel-kind', 'split-bus')) {
    found.push(
      'Split bus: no single switch turns the house off, and no handle shows the size of the service. An interlock at one of its switches would not cut off the rest.',
    );
  }
  if (facts.is('panel-kind', 'fuses'))
    found.push('Fuses: there is no breaker an interlock could slide against.');
  if (facts.is('panel-kind', 'no-main')) {
    found.push(
      'No main in this box: it may be a sub-panel, whose handle numbers are not the service. Look for the main by the meter.',
    );
  }
  if (facts.open('panel-kind'))
    found.push('The kind of panel is not known; an interlock must not be planned before it is.');
  if (main !== null && bus !== null && main > bus) {
    found.push(
      `The main (${main} A) is larger than the bus (${bus} A): the bus is not protected until an electrician has settled it.`,
    );
  }
  if (facts.is('supply-volts', 'v120-208')) {
    found.push(
      '120/208 V: heaters give about three quarters of their 240 V power, and inverters must be listed for 208 V.',
    );
  }
  return found;
}

function notes(home: Home): string[] {
  const spaces = home.facts.told('panel-spaces') ? home.facts.number('panel-spaces') : null;
  const main = mainAmps(home);
  const room =
    spaces === null
      ? 'The free spaces were not counted; a two-pole breaker needs two side by side.'
      : spaces >= 2
        ? `${spaces} free spaces: room for a two-pole breaker if two lie side by side.`
        : `${spaces} free spaces: not room for a two-pole breaker; a sub-panel for chosen circuits makes room without a new service.`;
  if (main === null) return [room];
  const setPoint = largestSetPointAmps({ ratingAmps: main, hundredPercentRated: false });
  const wire = serviceConductorFor(main);
  return [
    ...(wire === null
      ? []
      : [
          `Service conductors of a ${main} A main: ${wire.copper} copper or ${wire.aluminum} aluminum where they carry the whole dwelling (Table 310.12).`,
        ]),
    room,
    `A listed load manager on this service may be set to ${Math.round(setPoint)} A at most, for its set point counts as continuous (220.70, 750.30, 2023 edition).`,
  ];
}
