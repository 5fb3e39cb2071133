import { shown } from '../../../quantity/shown';
import type { MustCarried } from '../../../routes/must-carried';
import type { Route } from '../../../routes/route';
import { inSentence, listOf } from '../list-of';
import { sayRouteTitle } from '../routes/route-titles';
import { sayFigure } from '../say-figure';

/** From here on nobody counts the hours. */
const TWO_WEEKS_HOURS = 336;

/** "35 h", "two weeks or more". */
export const cappedHours = (hours: number): string =>
  hours >= TWO_WEEKS_HOURS ? 'two weeks or more' : shown(hours, 'h');

/** The routes side by side. */
export const routes = {
  title: 'The routes side by side',
  columns: ['Route', 'Of what must run', 'How long (careful count)', 'Cost installed', 'Prices of'],
  costsAreRanges: 'Costs are ranges to ask quotes against, never quotes.',
  alsoPossible: 'Also possible here:',
  notPossible: 'Not possible here:',
  notKnownYet: 'Not known yet, for want of an answer:',
  why: (reasons: readonly string[]) => [...new Set(reasons)].join('; '),
  because: (titles: readonly string[], why: string) => `${titles.join(', ')}: ${why}.`,
  carriesNone: 'none',
  carried: ({ carried, of }: MustCarried) => (carried === of ? 'all' : `${carried} of ${of}`),
  noPower: 'no power',
  /** Hours by both counts; null where gas flows from the street. */
  hours(hours: Route['lasting']['hours']): string {
    if (hours === null) return 'while the gas flows';
    if (hours.low >= TWO_WEEKS_HOURS) return 'two weeks or more';
    const [likely, careful] = [hours.value, hours.low].map(cappedHours) as [string, string];
    return likely === careful ? likely : `${likely} (${careful})`;
  },
  whileAtHome: (hours: string) => `${hours} while it stands at home`,
  onceCansAreFilled: (today: string, then: string) => `${today}; with the cans filled ${then}`,
  noPrices: 'none',
  years: (from: number, to: number) => (from === to ? String(from) : `${from} to ${to}`),
  /** "Power pack: 5 of 7, 43 h, $1,600 ($900 to $2,600). Without the furnace (is wired in, not plugged in)." */
  inOneLine(
    { called, costUsd }: Route,
    given: { carried: string; howLong: string; without: readonly { name: string; why: string }[] },
  ): string {
    const missed = given.without.map(({ name, why }) => `${inSentence(name)} (${why})`);
    const rest = missed.length > 0 ? ` Without ${listOf([...new Set(missed)])}.` : '';
    return `${sayRouteTitle(called)}: ${given.carried}, ${given.howLong}, ${sayFigure(costUsd)}.${rest}`;
  },
};
