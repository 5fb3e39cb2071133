import type { HealthFirst } from '../../../plan/ride-through/health-first';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { inSentence, listOf } from '../list-of';
import { sayShare } from './share';

type Covered = NonNullable<HealthFirst['covered']>;

/** How long the health devices are covered when all else is off. */
export const healthFirst = {
  /** Without the count, only what is left out. */
  onlyMissed: (missed: string) => `Health devices first.${missed}`,
  /** With a space before it. */
  missed: (names: readonly string[]) =>
    ` This route does not carry the ${listOf(names.map(inSentence))}.`,
  covered(names: readonly string[], covered: Covered, goalHours: number): string {
    const { likelyHours, carefulHours, likelyShare, carefulShare } = covered;
    const goal = formatQuantity(goalHours, 'h');
    return `Health devices first: with all else off from the first minute the ${listOf(names.map(inSentence))} runs ${about(likelyHours)} (careful count ${span(carefulHours)}), through ${sayShare(likelyShare)} of 100 outages of ${goal} (careful ${sayShare(carefulShare)}). It goes off last.`;
  },
  /** Short, for the first page, with a space before it. */
  alone: (names: readonly string[], { likelyHours, carefulHours }: Covered) =>
    ` The ${listOf(names.map(inSentence))} alone: ${about(likelyHours)}, careful ${span(carefulHours)}.`,
  carriesNone: ' It carries no health device.',
};

/** The longest outage counted, h. */
const LONGEST = 336;

const about = (hours: number) => `${hours >= LONGEST ? '' : 'about '}${span(hours)}`;

function span(hours: number): string {
  return hours >= LONGEST ? 'two weeks or more' : shown(hours, 'h');
}
