import type { Widths } from '../../home/answer-figure';
import type { Home, Rank } from '../../home/home';
import type { RouteKind } from '../../kinds/route-kind';
import { fuelShare, type GeneratorFuel } from '../../tables/fuels';
import { type PowerStep, powerSteps } from '../../tables/generic-steps';
import { ruleIfs, ruleStops } from '../association';
import { cordsPart } from '../cords-there';
import { owned, part } from '../costs';
import { type Fitted, fitPower, powerOf } from '../fit-power';
import { fuelContainers, leansOnCans } from '../fuel/fuel-containers';
import { fromSameTank, sharedTankNotes } from '../fuel/propane-beside';
import { runHours } from '../fuel/run-hours';
import { portableGeneratorPart } from '../generator-part';
import { atSite, fuelAtHand, fuelHours, fuelUse, portableFuel, siteShare } from '../generator-size';
import { hungryShare } from '../hungry-share';
import { cannot, lasts, lastsHours, makeRoute } from '../make-route';
import type { Note } from '../note';
import { alwaysOff, loadsOf, splitPlugIn } from '../pick-loads';
import type { FuelUse, LeftOut, Part, Route } from '../route';
import type { If } from '../stops/condition';
import {
  fuelIfs,
  generatorStops,
  handStops,
  plugIfs,
  wiringIfs,
  wiringStops,
} from '../stops/stops';
import { transferTime } from '../transfer-time';
import { blockNotes } from './generator-blocks';
import { inletThere, type OwnGenerator, ownGenerator } from './own-generator';

interface Variant {
  readonly kind: RouteKind;
  readonly cords: boolean;
}

const withCords: Variant = {
  kind: 'engine-cords',
  cords: true,
};
const withInlet: Variant = {
  kind: 'engine-inlet',
  cords: false,
};

/** What is bought: no larger one than that, W; anew, though one is there. */
export interface Buying {
  readonly mostWatts?: number;
  readonly anew?: boolean;
}

/** A portable generator outdoors, heavy cords through a door to what plugs in. */
export function generatorCords(home: Home, widths: Widths, buying: Buying = {}): Route {
  return portable(home, widths, withCords, buying);
}

/** A portable generator outdoors, one cord to an inlet, a listed interlock or transfer switch to the panel. */
export function generatorInlet(home: Home, widths: Widths, buying: Buying = {}): Route {
  return portable(home, widths, withInlet, buying);
}

/** Theirs where it carries something, else one to buy. Where the most is too little for all, the hardest things are left out. */
function portable(
  home: Home,
  widths: Widths,
  variant: Variant,
  { mostWatts = Infinity, anew = false }: Buying,
): Route {
  const stops = [
    ...generatorStops(home),
    ...ruleStops(home),
    ...handStops(home),
    ...(variant.cords ? [] : wiringStops(home)),
  ];
  if (stops.length > 0) return cannot(variant.kind, stops);
  const own = anew ? null : ownGenerator(home);
  const wanted = wantedLoads(home, variant, own?.volts ?? 240);
  const fitted = fitPower({
    loads: wanted.loads,
    seasons: home.goalSeasons,
    steps: own === null ? stepsFor(home, variant, mostWatts) : [own.step],
    startEnd: own?.startEnd ?? 'value',
    maySoftStart: !variant.cords,
    source: own === null ? 'portable-generator' : 'own-generator',
  });
  if (fitted === null) {
    if (own !== null) return portable(home, widths, variant, { mostWatts, anew: true });
    return cannot(variant.kind, [{ code: 'portable-carries-nothing' }]);
  }
  return describe(home, widths, {
    variant: variant,
    own,
    fitted,
    leftOut: [...wanted.leftOut, ...fitted.leftOut],
  });
}

/** Sizes to buy: an inlet of 240 V needs a set that gives 240 V, and on propane each gives less. */
function stepsFor(home: Home, variant: Variant, mostWatts: number): PowerStep[] {
  const steps = powerSteps('engine').filter(
    (step) => step.watts <= mostWatts && (variant.cords || step.volts === 240),
  );
  return atSite(home, steps, fuelShare(portableFuel(home)));
}

/** Must-run loads, and good-to-have ones when more than a few things are wished for. */
function wantedLoads(home: Home, variant: Variant, volts: 120 | 240) {
  const ranks: Rank[] = home.facts.is('goal-scope', 'few') ? ['must'] : ['must', 'good'];
  const loads = loadsOf(home, ranks);
  if (variant.cords) {
    const { plugIn, leftOut } = splitPlugIn(loads);
    return { loads: plugIn, leftOut };
  }
  if (volts === 240) return { loads, leftOut: [] as LeftOut[] };
  const need240 = loads.filter((load) => load.volts === 240);
  return {
    loads: loads.filter((load) => load.volts === 120),
    leftOut: need240.map(
      (load): LeftOut => ({
        load: load.id,
        must: load.rank === 'must',
        why: { code: 'own-generator-120' },
      }),
    ),
  };
}

interface Described {
  readonly variant: Variant;
  readonly own: OwnGenerator | null;
  readonly fitted: Fitted;
  readonly leftOut: readonly LeftOut[];
}

function describe(home: Home, widths: Widths, it: Described): Route {
  const { variant, own, fitted } = it;
  const fuelKind = own?.fuel ?? portableFuel(home);
  const onFuel = own?.fuelShare ?? fuelShare(fuelKind);
  const ratedWatts = own?.ratedWatts ?? fitted.step.watts / (siteShare(home) * onFuel);
  const generator = { ratedKw: ratedWatts / 1000, siteKw: fitted.step.watts / 1000 };
  const season = hardestSeason(home, fitted);
  const typeOf = own?.type ?? 'portable';
  const runsByHour = runHours(
    { kind: variant.kind, way: home.way },
    fitted.carried,
    season,
    ALL_DAY,
  );
  const burns = fuelUse({
    generator: typeOf,
    fuel: fuelKind,
    ...generator,
    wattsByHour: fitted.demand.wattsByHour[season],
    runsByHour,
    hungry: hungryShare(fitted.carried, season),
    atHand: fuelAtHand(home, widths, fuelKind),
    ...fromSameTank(home, fuelKind, fitted.carried),
  });
  const fuel = leansOnCans(home, burns);
  const refill = home.facts.is('fuel-refill', 'sure', 'likely') && home.facts.told('fuel-refill');
  return makeRoute(variant.kind, {
    ifs: ifsOf(home, variant, { own, fitted, fuelKind }),
    carries: fitted.carried.map((load) => load.id),
    leavesOut: [...it.leftOut, ...alwaysOff(home)],
    power: powerOf(fitted, ratedWatts),
    fuel,
    generator: { ...generator, runsByHour, type: typeOf },
    transferTime: transferTime('started-by-hand'),
    lasting: lastingOf(home, fuel),
    parts: partsOf(home, variant, {
      own,
      fitted,
      ratedWatts,
      containers: fuelContainers(home, fuel),
    }),
    notes: [
      ...notesOf(home, fitted, ratedWatts, refill),
      ...sharedTankNotes(fuel),
      ...ownNotes(home, own, onFuel),
      ...blockNotes(home, { fitted, generator: { ...generator, type: typeOf }, fuel, season }),
    ],
  });
}

/** A generator that carries the loads itself runs day and night. */
export const ALL_DAY: readonly number[] = Array.from({ length: 24 }, () => 1);

/** The season of the goal in which the loads take most. */
export function hardestSeason(home: Home, { demand }: Pick<Fitted, 'demand'>) {
  const energy = (s: (typeof home.goalSeasons)[number]) => demand.kwhPerDay[s].value;
  return home.goalSeasons.reduce((a, b) => (energy(b) > energy(a) ? b : a));
}

function lastingOf(home: Home, fuel: FuelUse) {
  const hours = fuelHours(fuel);
  if (hours === null) {
    return lasts(null, true, { code: 'while-street-gas' });
  }
  const inTank = fuel.fuel === 'propane';
  const atHand = (inTank ? fuel.tank : undefined) ?? fuel.atHand!;
  return lastsHours(home, hours, { code: 'fuel', fuel: fuel.fuel, atHand, inTank });
}

function ifsOf(
  home: Home,
  variant: Variant,
  { own, fitted, fuelKind }: Pick<Described, 'own' | 'fitted'> & { fuelKind: GeneratorFuel },
): If[] {
  const ifs: If[] = ['co-alarms'];
  if (variant.cords) ifs.push(...plugIfs(fitted.carried));
  else ifs.push(...(usesInletThere(home, own) ? [LOOKED_AT] : wiringIfs(home)));
  if (!variant.cords && own?.volts === 120) ifs.push(AT_120);
  ifs.push(...fuelIfs(home, fuelKind), ...ruleIfs(home));
  if (!home.facts.told('operators')) ifs.push('somebody-runs-it');
  return ifs;
}

/** The inlet there is for a set of 240 V; one of 120 V goes on no such inlet. */
const usesInletThere = (home: Home, own: OwnGenerator | null) =>
  inletThere(home) && own?.volts !== 120;

const LOOKED_AT: If = 'own-inlet-looked-at';
const AT_120: If = 'inlet-of-120';

function partsOf(
  home: Home,
  variant: Variant,
  given: Pick<Described, 'own' | 'fitted'> & { ratedWatts: number; containers: readonly Part[] },
): Part[] {
  const { own, fitted, ratedWatts, containers } = given;
  const generator =
    own === null
      ? portableGeneratorPart(ratedWatts)
      : owned({ code: 'own-generator', kw: ratedWatts / 1000 }, 'portable-engine');
  const soft = fitted.softStarter ? [part('soft-starter')] : [];
  if (variant.cords) return [generator, cordsPart(home), ...containers];
  if (usesInletThere(home, own)) {
    const there = owned({ code: 'own-inlet' }, 'inlet-interlock');
    return [generator, there, ...soft, ...containers];
  }
  const inlet =
    own?.volts === 120
      ? part('inlet-interlock', 1, { code: 'inlet-of-120' })
      : part('inlet-interlock');
  return [generator, inlet, ...soft, part('permit'), ...containers];
}

/** What is known of their own generator, and what was taken for want of it. */
function ownNotes({ facts }: Home, own: OwnGenerator | null, onFuel: number): Note[] {
  const notes: Note[] = [];
  if (onFuel < 1) {
    notes.push({ code: 'less-on-this-fuel', share: 1 - onFuel });
  }
  if (own === null) return notes;
  if (!facts.told('engine-kind')) {
    notes.push('inverter-not-known');
  }
  return notes;
}

function notesOf(home: Home, fitted: Fitted, ratedWatts: number, refill: boolean): Note[] {
  const notes: Note[] = [];
  const share = siteShare(home);
  if (share < 0.97) {
    notes.push({ code: 'less-at-this-height', watts: ratedWatts * share, ofWatts: ratedWatts });
  }
  if (fitted.softStarter) notes.push('soft-starter-counted');
  notes.push(refill ? 'more-fuel-expected' : 'no-refill-counted');
  return notes;
}
