import type { WaysOn } from '../../../advice/ways-on/ways-on';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence, listOf } from '../list-of';
import { usd } from '../say-dollars';

/** Ways on where nothing within the money does the whole job. */
export const waysOn = {
  title: 'Three ways on',
  intro: (goalHours: number) =>
    `Nothing within your money carries all that must run for ${span(goalHours)}. Each of these would change that; talk them over before you buy.`,
  moreMoney(way: WaysOn['moreMoney']): string {
    if (way === null) return 'More money: no route that is open here does it at any price.';
    const { line, moreUsd } = way;
    return `More money: ${usd(moreUsd)} more, ${usd(line.usd)} in all, buys the ${titleOf(line)}. It carries all that must run for the time you asked.`;
  },
  shorterGoal(way: WaysOn['shorterGoal']): string {
    if (way === null)
      return 'A shorter goal: nothing within your money carries all that must run, for any time worth planning.';
    return `A shorter goal: ${span(way.hours)}. That long the ${titleOf(way.line)}, ${usd(way.line.usd)}, carries all that must run in 9 of 10 outages.`;
  },
  lessCarried(way: WaysOn['lessCarried'], names: readonly string[]): string {
    if (way === null)
      return 'Less carried: doing without one thing or a few does not make the rest last. What health or a dry house hangs on is not counted as what may go.';
    return `Less carried: without the ${listOf(names.map(inSentence))}, the ${titleOf(way.line)}, ${usd(way.line.usd)}, carries the rest for the time you asked.`;
  },
  /** The ways that lead somewhere, in one line for the first page. */
  onFrontPage({ moreMoney, shorterGoal, lessCarried }: WaysOn, names: readonly string[]): string {
    const ways = [
      ...(moreMoney === null
        ? []
        : [
            `${usd(moreMoney.moreUsd)} more (${usd(moreMoney.line.usd)} in all) for the ${titleOf(moreMoney.line)}`,
          ]),
      ...(shorterGoal === null ? [] : [`a goal of ${span(shorterGoal.hours)}`]),
      ...(lessCarried === null ? [] : [`doing without the ${listOf(names.map(inSentence))}`]),
    ];
    return ways.length === 0
      ? 'Ways on: none of more money, a shorter goal or fewer things does it here. Plan to leave.'
      : `Ways on, for the whole job: ${ways.join('; or ')}.`;
  },
  leaveWhenItEnds: (hours: number | null) =>
    `When to leave: ${hours === null ? 'before it ends' : `before it ends, after about ${span(hours)}`}, or as soon as the room stays below 60 °F or above 90 °F.`,
};

const span = (hours: number) => formatQuantity(Math.round(hours), 'h');

function titleOf({ route, way }: NonNullable<WaysOn['moreMoney']>['line']): string {
  return `${inSentence(route!.title)}${way === 'thrifty' ? ' (living thriftily)' : ''}`;
}
