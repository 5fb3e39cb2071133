import interview from '#compiled/questions.js';
import { hardestSeason } from '../../src/advice/hardest-season';
import { candidatesOf, givesPower } from '../../src/advice/list/candidate';
import { isEnough } from '../../src/advice/list/enough';
import { type Ranked, rank } from '../../src/advice/list/list-of';
import { asUsual, thriftily } from '../../src/advice/list/living';
import { otherEnough } from '../../src/advice/list/other-enough';
import type { SizeKind } from '../../src/advice/list/source';
import type { Weighed } from '../../src/advice/list/unbeaten';
import { type Value, weighingOf, worthOf } from '../../src/advice/list/value';
import { SizeOdds } from '../../src/advice/ride/size-odds';
import { widthsOf } from '../../src/home/build-home';
import type { Home } from '../../src/home/home';
import { SyntheticYears } from '../../src/home/weather/synthetic-years';
import { allKinds, sizedKind } from '../../src/routes/all-routes';

const YEARS = 2;
export const widths = widthsOf(interview);
export const size: SizeKind = (kind, home, drawn) => sizedKind(kind, home, drawn, widths);

/** A home with its list, from a few drawn years. */
export interface Case {
  readonly home: Home;
  readonly drawn: SyntheticYears;
  readonly ranked: Ranked;
}

export function caseOf(home: Home, drawn = new SyntheticYears(home, YEARS)): Case {
  return { home, drawn, ranked: rank(home, drawn, allKinds(home, drawn, widths), size) };
}

/** Every size of every kind in both ways, weighed one by one: nothing is left out for its price. */
export function everything({ home, drawn }: Case): Weighed[] {
  return [asUsual(home), thriftily(home)].flatMap((living) => {
    if (living === null) return [];
    const by = weighingOf(living.home, allKinds(home, drawn, widths));
    const odds = new SizeOdds(living.home, drawn, hardestSeason(home));
    return allKinds(living.home, drawn, widths)
      .flatMap((kind) => candidatesOf(living, kind))
      .map((one) => ({ ...one, value: worthOf(one, by, odds) }));
  });
}

const figures = ({ devices, odds, sure, full, long, share }: Value) => [
  devices ?? 0,
  Number(sure),
  odds,
  Number(full),
  Number(long),
  share,
];

/** By hand, place after place: the first figure that differs decides. */
export function atLeast(a: Value, b: Value): boolean {
  const [x, y] = [figures(a), figures(b)];
  const at = x.findIndex((one, i) => one !== y[i]);
  return at < 0 || x[at]! > y[at]!;
}

/** Lines of the list that something beats, weighed with nothing left out: empty where the list is right. */
export function beatenOn(one: Case, others: readonly Weighed[]): string[] {
  return one.ranked.all.flatMap((line) =>
    others
      .filter(
        (other) =>
          (other.usd < line.usd || (other.usd === line.usd && !atLeast(line.value, other.value))) &&
          atLeast(other.value, line.value) &&
          (other.living.way === 'usual' || line.living.way === 'thrifty' || !isEnough(line)),
      )
      .map(
        ({ usd, counted }) =>
          `${line.counted.kind} for ${line.usd} $ by ${counted.kind} for ${usd} $`,
      ),
  );
}

/** The cheapest that is enough, of all that was weighed, is on the list: empty where it is. */
export function leastMissed({ ranked }: Case, others: readonly Weighed[]): string[] {
  const least = (set: readonly Weighed[]) =>
    Math.min(...set.filter(isEnough).map(({ usd }) => usd));
  const [listed, found] = [least(ranked.all), least(others)];
  return found < listed ? [`${found} $ is enough, the least on the list is ${listed} $`] : [];
}

/**
 * What is said of the one advised, "of all that do it, it costs least", is true: nothing weighed is cheaper and enough, but what asks for
 * thrift where this one does not, or the same with fewer cans, and both are named with the least price there is.
 */
export function falseReasons({ ranked }: Case, others: readonly Weighed[]): string[] {
  const { chosen, all } = ranked;
  if (chosen === null || !isEnough(chosen)) return [];
  const named = otherEnough(all, chosen);
  const cheaper = others.filter((one) => one.usd < chosen.usd && isEnough(one));
  const { way } = chosen.living;
  const sets = {
    thriftily: cheaper.filter((one) => way === 'usual' && one.living.way === 'thrifty'),
    'less-fuel': cheaper.filter((one) => one.living.way === way),
    neither: cheaper.filter((one) => way === 'thrifty' && one.living.way === 'usual'),
  };
  const least = (set: readonly Weighed[]) => Math.min(...set.map(({ usd }) => usd));
  const unsaid = (['thriftily', 'less-fuel'] as const).filter((standing) => {
    const said = named.find((one) => one.standing === standing);
    return said === undefined ? sets[standing].length > 0 : said.usd !== least(sets[standing]);
  });
  const fuel = named.find(({ standing }) => standing === 'less-fuel');
  return [
    ...unsaid.map((standing) => `${standing}: a cheaper one is enough and is not named`),
    ...(fuel !== undefined && fuel.kind !== chosen.counted.kind
      ? ['another route, not fewer cans']
      : []),
    ...(fuel === undefined && sets.neither.length > 0 ? ['as usual for less'] : []),
    ...(cheaper.some((one) => !givesPower(one)) ? ['what needs no power is enough for less'] : []),
  ];
}
