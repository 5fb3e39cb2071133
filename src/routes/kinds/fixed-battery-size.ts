import type { Home, Rank } from '../../home/home';
import { healthHangs } from '../../home/people/health-devices';
import { ownSolarKw } from '../../home/solar/own-solar';
import type { SyntheticYears } from '../../home/weather/synthetic-years';
import type { RouteKind } from '../../kinds/route-kind';
import { traitsOf } from '../../kinds/route-traits';
import { onceMade } from '../../quantity/once-made';
import { batteryStepsKwh, solarStepsKw } from '../../tables/generic-steps';
import {
  goalHours,
  goalNet,
  hoursFrom,
  longestCounted,
  type SeasonNet,
  sizeFor,
  usableOf,
} from '../battery-hours';
import { budgetUsd } from '../budget';
import { part, total } from '../costs';
import type { Fitted } from '../fit-power';
import { hungryShare } from '../hungry-share';
import { ownBatteryPart, ownFixedBattery } from '../own-battery';
import { ownPanelParts } from '../own-panels';
import type { Part, SizeByOdds } from '../route';

/** What sets the three fixed batteries apart. */
export interface Variant {
  readonly kind: RouteKind;
  readonly ranks: (home: Home) => Rank[];
  readonly solar: boolean;
}

/** Reached in 9, in 5 and in 1 of 10 outages, h. */
export interface HoursCounted {
  readonly low: number;
  readonly value: number;
  readonly high: number;
}

/** What was chosen, and by what it was chosen. */
export interface Chosen {
  readonly nameplateKwh: number;
  readonly usableKwh: number;
  readonly solarKw: number;
  readonly size: SizeByOdds;
  /** Counted when they are asked for: it is the slowest of all this. */
  readonly hours: () => HoursCounted;
  readonly reaches: boolean;
}

/**
 * The cheapest of the generic steps that carries 9 such outages in 10 (where life may hang on it: 9 winters in
 * 10, whenever it starts; where health does, at the high end of every use); where none does, what the budget buys, at least 10 kWh.
 */
export function choose(
  home: Home,
  variant: Variant,
  fitted: Fitted,
  options: readonly SunOption[],
): Chosen {
  const price = (o: { nameplateKwh: number; solarKw: number }) =>
    total(partsOf(home, variant, fitted, o.nameplateKwh, o.solarKw)).value;
  const able = options.flatMap((o) =>
    o.nameplateKwh === null ? [] : [{ ...o, nameplateKwh: o.nameplateKwh }],
  );
  const best = able.sort((a, b) => price(a) - price(b))[0];
  const last = options.at(-1)!;
  const kwh = best?.nameplateKwh ?? withinBudget(home, variant, fitted, last.solarKw);
  return withHours(sizeOf(home, best ?? last, kwh));
}

/** Every step of the battery beside every size of the array; the hours it lasts are left at zero. */
export function everySize(home: Home, options: readonly SunOption[]): Unhoured[] {
  return options.flatMap((option) => batteryStepsKwh().map((kwh) => sizeOf(home, option, kwh)));
}

/** A size before its hours are counted. */
export type Unhoured = Omit<Chosen, 'hours'> & Pick<SunOption, 'hoursOf'>;

function sizeOf(home: Home, option: SunOption, nameplateKwh: number): Unhoured {
  const { solarKw, size, hoursOf } = option;
  const usableKwh = (ownFixedBattery(home)?.usableKwh ?? 0) + usableOf(home, nameplateKwh);
  return {
    nameplateKwh,
    usableKwh,
    solarKw,
    size,
    hoursOf,
    reaches: usableKwh >= asked(home, size),
  };
}

/** The same with the hours it lasts: the low end by the careful count. */
export function withHours({ hoursOf, ...size }: Unhoured): Chosen {
  const { usableKwh } = size;
  return {
    ...size,
    hours: onceMade(() => hoursOf(usableKwh)),
  };
}

/** What some kW of panels make of the goal's seasons. */
export interface SunOption {
  readonly solarKw: number;
  /** Hours that so much usable storage lasts, kWh: the low end by the careful count. */
  readonly hoursOf: (usableKwh: number) => HoursCounted;
  readonly size: SizeByOdds;
  /** The smallest step that does; null: none. */
  readonly nameplateKwh: number | null;
}

/** Each size of the array that may be laid beside the battery, with the storage it leaves to ask for. */
export function sunOptions(
  home: Home,
  drawn: SyntheticYears,
  variant: Variant,
  fitted: Fitted,
): SunOption[] {
  const goal = onceMade(() => goalHours(home, drawn, fitted.carried));
  const own = ownFixedBattery(home)?.usableKwh ?? 0;
  return solarOptions(home, drawn, variant).map((solarKw) => {
    const netsOf = (careful: boolean): SeasonNet[] =>
      goal().map((hours) => ({
        pieces: hours.pieces,
        netKwh: goalNet(hours, fitted.step.watts / 1000, solarKw, careful),
      }));
    const careful = healthHangs(home);
    const by = (name: string) => [name, ...hoursKey(home, fitted, solarKw)];
    const size = drawn.counted(
      fitted.carried,
      [...by('storage'), careful, Math.round(home.goalHours.value)],
      () => sizeFor(home, netsOf(careful)),
    );
    const hoursOf = (usableKwh: number) =>
      drawn.counted(fitted.carried, [...by('hours'), usableKwh], () => ({
        ...hoursFrom(netsOf(false), usableKwh),
        low: hoursFrom(netsOf(true), usableKwh).low,
      }));
    const enough = (kwh: number) => own + usableOf(home, kwh) >= asked(home, size);
    return { solarKw, hoursOf, size, nameplateKwh: batteryStepsKwh().find(enough) ?? null };
  });
}

/** Whatever the net energy of the goal's seasons rests on beside weather, roof and the likely use of the loads. */
function hoursKey(home: Home, { carried, step }: Fitted, solarKw: number): (string | number)[] {
  const hungry = home.goalSeasons.map((season) => `${season} ${hungryShare(carried, season)}`);
  return [...hungry, longestCounted(home), step.watts, solarKw];
}

/** Usable storage that counts as enough, kWh. */
const asked = (home: Home, size: SizeByOdds): number =>
  sizedByYears(home) ? size.nineYearsInTenKwh : size.nineOutagesInTenKwh;

/** Where somebody depends on a device, or nobody knows, a bad winter must be carried whenever the outage starts. */
export function sizedByYears(home: Home): boolean {
  return home.lifeSupport !== 'no';
}

/** The panels that are there; or, with solar, up to four steps of the roof's room, the largest last. */
function solarOptions({ facts }: Home, drawn: SyntheticYears, variant: Variant): number[] {
  const own = ownSolarKw(facts);
  if (!variant.solar) return [own];
  const room = drawn.roof?.roomKw ?? 0;
  return solarStepsKw()
    .filter((kw) => kw <= room)
    .slice(-4)
    .map((kw) => own + kw);
}

/** The largest battery step that the money told buys; 10 kWh when it buys less, and when no money was told. */
function withinBudget(home: Home, variant: Variant, fitted: Fitted, solarKw: number): number {
  const budget = budgetUsd(home) ?? 0;
  const steps = batteryStepsKwh().filter((kwh) => kwh >= 10);
  const bought = steps.filter(
    (kwh) => total(partsOf(home, variant, fitted, kwh, solarKw)).value <= budget,
  );
  return bought.at(-1) ?? 10;
}

/** What the route is made of. */
export function partsOf(
  home: Home,
  variant: Variant,
  fitted: Fitted,
  nameplateKwh: number,
  solarKw: number,
): Part[] {
  const more = solarKw - ownSolarKw(home.facts);
  const solar = more > 0 ? [part('solar', more * 1000, { code: 'roof-panels', kw: more })] : [];
  const wiring =
    traitsOf[variant.kind].connection === 'house' ? part('load-control') : part('backup-subpanel');
  const soft = fitted.softStarter ? [part('soft-starter')] : [];
  const own = ownFixedBattery(home);
  const battery = variant.solar ? 'battery-with-solar' : 'battery';
  return [
    part(battery, nameplateKwh, {
      code: 'battery-with-inverter',
      kwh: nameplateKwh,
      inverterWatts: fitted.step.watts,
    }),
    ...(own === null ? [] : [ownBatteryPart(own)]),
    ...solar,
    ...ownPanelParts(home),
    wiring,
    ...soft,
    part('permit'),
  ];
}
