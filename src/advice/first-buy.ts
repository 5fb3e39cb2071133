import type { Home } from '../home/home';
import { isPack } from '../kinds/ask-traits';
import type { RouteKind } from '../kinds/route-kind';
import type { RouteTitle } from '../kinds/route-title';
import { traitsOf } from '../kinds/route-traits';
import { laterUsd } from '../routes/budget';
import type { Part, Route } from '../routes/route';
import { type Candidate, givesPower } from './list/candidate';
import type { Ranked } from './list/list-of';
import { thriftily } from './list/living';
import type { Weighed } from './list/unbeaten';
import { compareValues } from './list/value';

/** Where the route advised costs more than there is now and some money is for later: what comes first, and what waits. */
export interface FirstBuy {
  /** What was told for now, and what the route costs above it, with its way of living, $. */
  readonly nowUsd: number;
  readonly shortUsd: number;
  /** What the money of now buys of it, which works by itself and stays a part of it; null: it is bought whole, later. */
  readonly part: FirstPart | null;
  /** Price of the rest then, likely $; of the whole where nothing of it comes first. */
  readonly restUsd: number;
  /** Where the low end of its price is within the money of now, that end, $; null elsewhere, and where a part comes first. */
  readonly lowUsd: number | null;
  /** What it takes to live thriftily until then, likely $; null where that changes nothing, or is more than there is now. */
  readonly thriftUsd: number | null;
}

export interface FirstPart {
  readonly kind: RouteKind;
  readonly called: RouteTitle;
  readonly parts: readonly Part[];
  /** A smaller pack, beside which another comes later: its size, kWh; null for any other part. */
  readonly packKwh: number | null;
  /** With the way of living of the route advised, likely $. */
  readonly usd: number;
}

/** Null where the money of now buys all of it, no money is for later, or no source is advised. */
export function firstBuy(
  home: Home,
  { chosen, weighed, scale, budgetUsd }: Ranked,
): FirstBuy | null {
  const later = laterUsd(home);
  if (chosen === null || budgetUsd === null || later <= 0 || !givesPower(chosen)) return null;
  const nowUsd = budgetUsd - later;
  if (chosen.usd <= nowUsd) return null;
  const parts = weighed.filter(
    (one) =>
      one.usd <= nowUsd && isBought(one) && isPartOf(one, chosen) && wastesLittle(one, chosen),
  );
  const part = partNow(
    chosen,
    parts.map((one) => scale.weigh(one)),
  );
  const thrift = thriftily(home)?.extraUsd ?? null;
  const lowUsd = chosen.sized.route.costUsd.low + chosen.living.extraUsd;
  return {
    nowUsd,
    shortUsd: chosen.usd - nowUsd,
    part,
    restUsd: part === null ? chosen.usd : restUsd(chosen.sized.route, part),
    lowUsd: part === null && lowUsd <= nowUsd ? lowUsd : null,
    thriftUsd: thrift !== null && thrift <= nowUsd ? thrift : null,
  };
}

/** The one worth most, the cheapest of equals. */
function partNow(chosen: Weighed, parts: readonly Weighed[]): FirstPart | null {
  const [best] = [...parts].sort((a, b) => compareValues(b.value, a.value) || a.usd - b.usd);
  if (best === undefined || best.usd >= chosen.usd) return null;
  const { kind, called, parts: made, nameplateKwh } = best.sized.whole();
  const packKwh = isPack(traitsOf[kind]) ? nameplateKwh : null;
  return { kind, called, parts: made, packKwh, usd: best.usd };
}

/** What is all there already is used, and not bought first. */
const isBought = ({ sized }: Candidate) => sized.route.costUsd.value > 0;

/**
 * Its generator, battery and panels are those of the other, lived with alike, and nothing of its wiring is thrown away; or it is a smaller
 * pack of the kind, which runs its own things beside a second one.
 */
function isPartOf(one: Candidate, whole: Candidate): boolean {
  const [a, b] = [one.counted, whole.counted];
  if (isPack(traitsOf[a.kind]) && a.kind === b.kind) {
    return one.living === whole.living && a.nameplateKwh! < b.nameplateKwh!;
  }
  const [x, y] = [traitsOf[a.kind], traitsOf[b.kind]];
  return (
    one.living === whole.living &&
    givesPower(one) &&
    (a.generator !== null || a.nameplateKwh !== null || x.vehicle) &&
    x.generator === (a.generator === null ? 'none' : y.generator) &&
    (a.generator === null || a.generator.ratedKw === b.generator?.ratedKw) &&
    (a.nameplateKwh === null || (a.nameplateKwh === b.nameplateKwh && x.battery === y.battery)) &&
    (a.solarKw === null || a.solarKw === b.solarKw) &&
    storedFuel(a) <= storedFuel(b) &&
    x.vehicle === (x.vehicle && y.vehicle) &&
    x.owned === y.owned &&
    (x.connection === 'outlets' || x.connection === y.connection)
  );
}

/** Fuel it is counted with, its cans filled, in its own unit; 0 where none is kept. */
const storedFuel = ({ fuel }: Route): number => fuel?.atHand?.value ?? 0;

/** So much more than the whole may a part and the rest cost together, as cords do that an inlet makes needless. Our judgement. */
const MOST_WASTED = 0.1;

const wastesLittle = (one: Candidate, whole: Candidate): boolean =>
  one.usd + restUsd(whole.sized.route, one.sized.route) <= (1 + MOST_WASTED) * whole.usd;

/** What of the whole is not bought yet; of a pack what the smaller one leaves. */
function restUsd(whole: Route, { parts }: Pick<FirstPart, 'parts'>): number {
  const bought = new Map(parts.map((part) => [part.equipmentClass, part.costUsd.value]));
  return whole.parts.reduce(
    (sum, { equipmentClass, costUsd }) =>
      sum + Math.max(0, costUsd.value - (bought.get(equipmentClass) ?? 0)),
    0,
  );
}
