import type { Home, Load } from '../../home/home';
import type { LoadName } from '../../home/loads/load-name';
import { tellsOfHealth } from '../../home/people/health-devices';
import { hasFixedGenerator } from '../../kinds/ask-traits';
import { traitsOf } from '../../kinds/route-traits';
import type { Figure, Source } from '../../quantity/figure';
import type { Route } from '../../routes/route';
import { hasWiringToDo } from '../../routes/wiring-to-do';
import { hasGenerator, isFixedBattery } from './route-traits';
import type {
  QuotePoint,
  Range,
  ScopePurpose,
  ScopeRequirement,
  SiteQuestion,
} from './scope-points';
import { thereAlready } from './there-already';

/** A circuit of the route advised, as an electrician quotes it; what tells of somebody's health is named by its rank only. */
export interface ScopeCircuit {
  /** null: an outlet circuit that may not fail, whatever hangs on it. */
  readonly called: LoadName | null;
  readonly volts: number;
  readonly watts: Range;
  /** null: no motor. */
  readonly startVa: Range | null;
  readonly rank: 'must' | 'optional';
  /** Where its power comes from; of what tells of somebody's health its kind alone. */
  readonly how: Source;
  /** How its power is known, in a word: read or told goes before what was worked out from it. */
  readonly known: Source['kind'];
}

export interface Scope {
  readonly purpose: ScopePurpose;
  readonly circuits: readonly ScopeCircuit[];
  readonly requirements: readonly ScopeRequirement[];
  readonly quotePoints: readonly QuotePoint[];
  readonly siteQuestions: readonly SiteQuestion[];
}

/** What an electrician needs to quote this route without coming twice. Names no maker and no person's illness. */
export function scopeOf(home: Home, route: Route): Scope {
  return {
    purpose: { hours: home.goalHours.value, seasons: home.goalSeasons, called: route.called },
    circuits: home.loads.filter((load) => route.carries.includes(load.id)).map(circuit),
    requirements: hasWiringToDo(route) ? requirements(home, route) : [],
    quotePoints: hasWiringToDo(route) ? quotePoints(home, route) : [],
    siteQuestions: hasWiringToDo(route) ? siteQuestions(home, route) : [],
  };
}

/** The name of a device's figure names the device, so only its numbers go on. */
const rangeOf = ({ low, value, high }: Figure): Range => ({ low, value, high });

function circuit(load: Load): ScopeCircuit {
  const { runningWatts, startVa } = load;
  const unnamed = tellsOfHealth(load);
  return {
    called: unnamed ? null : load.called,
    volts: load.volts,
    watts: rangeOf(runningWatts),
    startVa: startVa === null ? null : rangeOf(startVa),
    rank: load.rank === 'must' ? 'must' : 'optional',
    how: unnamed ? { kind: runningWatts.source.kind } : runningWatts.source,
    known: knownAs(runningWatts),
  };
}

function knownAs({ source }: Figure): Source['kind'] {
  if (source.kind !== 'formula') return source.kind;
  const from = (source.from ?? []).map(knownAs);
  return from.find((kind) => kind === 'nameplate' || kind === 'told') ?? from[0] ?? 'formula';
}

function requirements(home: Home, route: Route): ScopeRequirement[] {
  const { power } = route;
  const { coldF, hotF } = home.site;
  const made: ScopeRequirement[] = [];
  if (power !== null) {
    const elevationFt = home.site.elevationFt.value;
    made.push(
      { code: 'continuous', watts: rangeOf(power.runningWatts), elevationFt, hotF },
      { code: 'momentary', va: rangeOf(power.startDemandVa) },
    );
  }
  made.push(...storage(route));
  made.push(
    { code: home.demand.must.needs240 ? 'volts-240' : 'volts-120' },
    { code: 'gap', transferTime: route.transferTime },
    { code: 'outdoor-air', coldF, hotF },
  );
  return [...made, ...listings(route)];
}

/** Storage and panels: what is bought is asked for, what is there is only told of. */
function storage(route: Route): ScopeRequirement[] {
  const { batteryKwh, solarKw, buys } = thereAlready(route);
  const made: ScopeRequirement[] = [];
  if (route.usableKwh !== null) {
    const kwh = route.usableKwh;
    if (buys.battery || batteryKwh === null)
      made.push({ code: 'usable-energy', kwh, besideKwh: batteryKwh });
    else made.push({ code: 'battery-there', labelKwh: batteryKwh, usableKwh: kwh });
  }
  if (solarKw !== null) made.push({ code: 'panels-there', kw: solarKw });
  return made;
}

function listings(route: Route): ScopeRequirement[] {
  const there = thereAlready(route);
  const made: ScopeRequirement[] = [{ code: 'transfer-listed' }];
  if (isFixedBattery(route) && (there.buys.battery || there.batteryKwh === null))
    made.push({ code: 'storage-listed' });
  if (hasGenerator(route) && there.generatorKw === null) {
    const fixed = hasFixedGenerator(traitsOf[route.kind]);
    made.push({ code: fixed ? 'fixed-generator-listed' : 'portable-generator-listed' });
  }
  if (route.solarKw !== null && (there.buys.solar || there.solarKw === null))
    made.push({ code: 'panels-listed' });
  return made;
}

function quotePoints(home: Home, route: Route): QuotePoint[] {
  const solar = route.solarKw !== null || home.facts.has('own-sources', 'solar');
  const battery = isFixedBattery(route);
  const there = thereAlready(route);
  const newBattery = there.buys.battery || there.batteryKwh === null;
  const points: readonly [boolean, QuotePoint][] = [
    [true, 'load-calculation'],
    [hasGenerator(route), 'exhaust-and-fuel'],
    [solar, 'panel-rows'],
    [battery, 'bus-way'],
    [battery, newBattery ? 'battery-facts' : 'facts-of-battery-there'],
    [true, 'transfer-equipment'],
    [true, 'circuits-moved'],
    [true, 'loads-shed'],
    [true, 'largest-motor'],
    [true, 'permit-and-fees'],
    [true, 'commissioning'],
    [true, 'price-of-unmet'],
  ];
  return points.filter(([yes]) => yes).map(([, point]) => point);
}

function siteQuestions({ facts }: Home, route: Route): SiteQuestion[] {
  const asks: readonly [boolean, SiteQuestion][] = [
    [facts.open('main-amps'), 'main-breaker'],
    [facts.open('panel-bus'), 'bus-rating'],
    [facts.open('panel-kind'), 'panel-kind'],
    [facts.open('panel-spaces'), 'free-spaces'],
    [facts.open('panel-map') || !facts.is('panel-map', 'all'), 'circuit-labels'],
    [true, 'neutral-bond'],
    [true, 'shared-neutrals'],
    [isFixedBattery(route), 'battery-distances'],
    [facts.has('own-sources', 'solar'), 'solar-side'],
  ];
  return asks.filter(([yes]) => yes).map(([, ask]) => ask);
}
