import type { Route } from '../../routes/route';
import { practice } from '../../tables/practice-figures';
import type { Line } from './line';
import { NEAR } from './near';
import { compareValues } from './value';

/** The lines of the list to lay beside the one advised. */
export interface Neighbors {
  /** The next one for clearly less money. */
  readonly cheaper: Line | null;
  readonly dearer: Dearer | null;
}

export interface Dearer {
  readonly line: Line;
  /** as-usual: it carries no more outages; what it adds is that nothing is turned off or used by turns. */
  readonly gain: 'better' | 'as-usual';
  /** Where by the careful count it lasts less long than the one advised: both counts, h; null: no end is foreseen. */
  readonly lessCareful: { readonly hours: number; readonly advisedHours: number | null } | null;
}

/** Null where no source is advised, and where the list holds nothing else. */
export function neighborsOf(list: readonly Line[], advised: number | null): Neighbors | null {
  const own = advised === null ? undefined : list[advised];
  if (own === undefined) return null;
  const others = list.filter(({ route }) => route !== null && !isSame(route, own.route));
  const apart = (1 - practice('price-apart-share')) * own.usd;
  const cheaper = others.filter(({ usd }) => usd < apart).at(-1) ?? null;
  const above = others.filter(({ usd }) => usd > own.usd);
  const noLess = above.filter((one) => lessCareful(one, own) === null);
  const line = noLess.find((one) => gainsMuch(one, own)) ?? noLess[0] ?? above[0];
  const dearer =
    line === undefined
      ? null
      : { line, gain: gainOf(line, own), lessCareful: lessCareful(line, own) };
  return cheaper === null && dearer === null ? null : { cheaper, dearer };
}

/** The same equipment, lived with in another way: no neighbor, for nothing else would be bought. */
const isSame = (a: Route, b: Route | null) =>
  b !== null && a.kind === b.kind && a.costUsd.value === b.costUsd.value;

const gainOf = (line: Line, own: Line): Dearer['gain'] =>
  line.way === 'usual' && own.way === 'thrifty' && compareValues(line.value, own.value) <= 0
    ? 'as-usual'
    : 'better';

/** More than the little that nobody pays for, or the goal itself. */
const gainsMuch = ({ value, reaches }: Line, own: Line) =>
  (reaches && !own.reaches) ||
  value.odds > own.value.odds + NEAR ||
  value.share > own.value.share + NEAR;

/** What carries more things may well carry them for less long: then that is said, not hidden. */
function lessCareful({ hours }: Line, own: Line): Dearer['lessCareful'] {
  if (hours === null || own.route?.carries.length === 0) return null;
  const advisedHours = own.hours?.careful ?? null;
  if (advisedHours !== null && Math.round(hours.careful) >= Math.round(advisedHours)) return null;
  return { hours: hours.careful, advisedHours };
}
