import type { QuestionId } from '#compiled/question-ids.js';
import type { Widths } from '../home/answer-figure';
import { buildHome, widthsOf } from '../home/build-home';
import { Facts } from '../home/facts';
import type { Home, Site } from '../home/home';
import { siteOf } from '../home/site';
import { type Roof, roofOf } from '../home/solar/roof';
import { SyntheticYears } from '../home/weather/synthetic-years';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/questions/question';
import { type Resolved, resolve } from '../interview/questions/resolve';
import { type RouteKind, routeKinds } from '../kinds/route-kind';
import { sizedKind } from '../routes/all-routes';
import type { Route } from '../routes/route';
import type { SizedKind } from '../routes/sized';
import type { SizeKind } from './list/source';
import { type PlainAdvice, plainAdvice } from './plain-advice';
import { remembered } from './remembered';

/** Drawn years of a trial. Not the first of the plan's hundred: months keep their means over all years that are drawn. */
export const TRIAL_YEARS = 5;

/** The advice a set of answers would get, on a few drawn years. */
export interface Trial {
  readonly home: Home;
  readonly routes: readonly Route[];
  readonly advice: PlainAdvice;
  /** What the whole list is made from, where it is wanted. */
  readonly kinds: readonly SizedKind[];
  readonly drawn: SyntheticYears;
  readonly size: SizeKind;
}

/**
 * What the list asks of a home besides what its routes are sized by: measures of living thriftily, cans, money. A trial is of
 * these answers too, or two that the list tells apart would be one. `test/advice/list-asks.test.ts` finds one that is missing.
 */
const askedByTheList: readonly QuestionId[] = [
  ...(['phone-works', 'cook-without', 'heat-cold', 'people-risk', 'heat-second'] as const),
  ...(['gas-supply', 'gasoline-gallons', 'budget-now', 'budget-later'] as const),
];

/**
 * Makes trials of answers to one interview. What a changed answer does not touch is not worked out again: home, each kind
 * of route and the advice are remembered by the answers they ask for, and the drawn weather by its place. The same answers
 * give the same trial, whatever was tried before; where nothing that is asked for differs, it is the very same object.
 */
export function trials(
  interview: Interview,
  asOf: string,
  years = TRIAL_YEARS,
): (answers: Answers) => Trial {
  const widths = widthsOf(interview);
  const siteAt = remembered((known) => siteOf(new Facts(known)));
  const homeOf = remembered((known) => buildHome(new Facts(known), widths, asOf, siteAt(known)));
  const drawnAt = drawnOnce(years);
  const roofAt = remembered((known) => roofOf(new Facts(known)));
  const kindsOf = sizers(widths);
  const size: SizeKind = (kind, home, drawn) => sizedKind(kind, home, drawn, widths);
  const trialOf = remembered((known): Trial => {
    for (const id of askedByTheList) known.get(id);
    const core = homeOf(known);
    const drawn = drawnAt(core, roofAt(known), known);
    const kinds = kindsOf(core, drawn, known);
    const routes = kinds.map(({ route }) => route);
    const home = { ...core, facts: new Facts(known) };
    return { home, routes, advice: plainAdvice(home, routes), kinds, drawn, size };
  });
  return (answers) => trialOf(resolve(interview.questions, answers, 'assume'));
}

/** The drawn years of a home, with the weather drawn once for each place and the sun once for each roof there. */
function drawnOnce(years: number) {
  const kept = new WeakMap<Site['place'], Map<Roof | null, SyntheticYears>>();
  return ({ site }: Home, roof: Roof | null, known: Resolved): SyntheticYears => {
    const byRoof = kept.get(site.place) ?? new Map<Roof | null, SyntheticYears>();
    kept.set(site.place, byRoof);
    const found = byRoof.get(roof);
    if (found !== undefined) return found;
    const here = { site, facts: new Facts(known) };
    const [first] = byRoof.values();
    const drawn = first === undefined ? new SyntheticYears(here, years) : first.over(here);
    byRoof.set(roof, drawn);
    return drawn;
  };
}

/** Each kind of route, remembered by the home and the roof it is sized for and by the answers it asks for besides. */
function sizers(widths: Widths) {
  type Size = (drawn: SyntheticYears, known: Resolved) => SizedKind | null;
  const kept = new WeakMap<Home, Map<Roof | null, Map<RouteKind, Size>>>();
  const sizerOf = (core: Home, kind: RouteKind): Size => {
    let drawn: SyntheticYears;
    const size = remembered((known) =>
      sizedKind(kind, { ...core, facts: new Facts(known) }, drawn, widths),
    );
    return (on, known) => {
      drawn = on;
      return size(known);
    };
  };
  return (core: Home, drawn: SyntheticYears, known: Resolved): SizedKind[] => {
    const byRoof = kept.get(core) ?? new Map<Roof | null, Map<RouteKind, Size>>();
    kept.set(core, byRoof);
    const byKind =
      byRoof.get(drawn.roof) ?? new Map(routeKinds.map((kind) => [kind, sizerOf(core, kind)]));
    byRoof.set(drawn.roof, byKind);
    return routeKinds.flatMap((kind) => byKind.get(kind)!(drawn, known) ?? []);
  };
}
