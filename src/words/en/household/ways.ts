import type { Measure } from '../../../home/measures/measures-of';
import type { DayOfCase } from '../../../plan/ways/days-of-case';
import type { InWay, RouteInWays } from '../../../plan/ways/route-in-ways';
import type { WaysOfLiving } from '../../../plan/ways/ways-of-living';
import type { Figure } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { inSentence, listOf } from '../list-of';
import { range, usd } from '../say-dollars';
import { sayFigure } from '../say-figure';
import { sayHours, sayMeasure, sayNotWhere, sayWhoMay } from '../say-measures';
import { sayShare } from './share';

/** Which measures stand together. */
type Use = Measure['use'];

/** A thing in turns, by its name. */
interface NamedTurn {
  readonly name: string;
  readonly hours: readonly (readonly [number, number])[];
}

/** What the thrifty way is made of. */
interface Means {
  readonly measures: readonly Measure[];
  readonly turns: readonly NamedTurn[];
  /** The generator rests while nothing is on. */
  readonly rests: boolean;
}

const titles: Readonly<Record<Use, string>> = {
  thrifty: 'At little or no cost. The thrifty way of living is made of these:',
  counted: 'You told us so, and every figure here counts on it:',
  bought: 'For more money:',
  margin: 'A help that no size here counts on:',
  later: 'Later, on the house:',
};

const scopes = {
  must: 'what must run',
  good: 'what must run and is good to have',
  all: 'everything at home',
} as const;

/** Need less first, and what both ways of living come to. */
export const ways = {
  title: 'Need less first',
  of: (use: Use) => titles[use],
  measure(one: Measure): string {
    const { does, gives } = sayMeasure(one.id);
    const set = one.setF === null ? '' : ` Set it to ${one.setF} °F.`;
    const jugs = one.gallons === null ? '' : ` That is ${formatQuantity(one.gallons, 'gal')}.`;
    const price =
      one.costUsd.high === 0 ? 'It costs nothing' : `It costs ${range(ends(one.costUsd))}`;
    const not = one.notWhere.length === 0 ? '' : ` Never ${listOf(one.notWhere.map(sayNotWhere))}.`;
    return `${does}${set}${jugs} ${effect(one)} ${gives} ${price}; ${sayWhoMay(one.who)}.${not}`;
  },
  days({ usual, thrifty, season, thriftyUsd }: WaysOfLiving): string {
    const cost =
      thriftyUsd.high > 0
        ? ` It costs about ${usd(thriftyUsd.value)} (${range(ends(thriftyUsd))}) to get ready for that.`
        : '';
    return `What must run takes ${sayFigure(usual.kwhPerDay, 'kWh')} on a hard ${season} day as usual, and ${sayFigure(thrifty.kwhPerDay, 'kWh')} if you live thriftily.${cost}`;
  },
  byTheHour: (turns: readonly NamedTurn[]) =>
    `By the hour that is: ${turns.map((one) => turn(one)).join('; ')}.`,
  tableOf: (goalHours: number, season: string) =>
    `Both ways with the same equipment, of 100 outages of ${formatQuantity(goalHours, 'h')} in ${season} (careful count after the slash):`,
  columns: ['Route', 'As usual', 'Thriftily'],
  daysOf: (title: string, storedGal: number | null) =>
    `The careful count day by day, both ways (${inSentence(title)}${storedGal === null ? '' : `, with ${formatQuantity(storedGal, 'gal')} stored`}):`,
  off: 'off',
  dayColumns: ['After', 'As usual', 'Thriftily'],
  after: (hours: number) => formatQuantity(hours, 'h'),
  day({ servedKwh, chargeKwh, fuelLeft, stoppedAfter }: DayOfCase): string {
    if (stoppedAfter !== null) return `stopped after ${formatQuantity(stoppedAfter, 'h')}`;
    const left = [
      ...(chargeKwh > 0 ? [`${formatQuantity(tenths(chargeKwh), 'kWh')} left`] : []),
      ...(fuelLeft === null ? [] : [`${formatQuantity(tenths(fuelLeft), 'gal')} left`]),
    ];
    return [`${formatQuantity(tenths(servedKwh), 'kWh')} used`, ...left].join(', ');
  },
  route: (title: string, { storedGal }: RouteInWays) =>
    `${inSentence(title)}${storedGal === null ? '' : `, with ${formatQuantity(storedGal, 'gal')} stored`}`,
  cell({ share, carefulShare, hours }: InWay): string {
    const odds = `${sayShare(share)} / ${sayShare(carefulShare)}`;
    if (hours === null) return odds;
    return `${odds}, lasts about ${span(hours.likely)} / ${span(hours.careful)}`;
  },
  /** What it is made of, by the hour where things are in turns. */
  means: ({ measures, turns, rests }: Means, between: 'to' | 'until' = 'to'): string =>
    [
      ...measures.map(({ id }) => sayMeasure(id).short),
      ...turns.map((one) => turn(one, between)),
      ...(rests ? ['the generator on only while something runs on it'] : []),
    ].join('; '),
  /** Where thrift is what reaches the goal, a line of its own on the first page, by the hour. */
  reachesThriftily(
    { usual, thrifty }: RouteInWays,
    goalHours: number,
    means: Means & { usdLikely: number },
  ): string {
    const price = means.usdLikely > 0 ? `, for about ${usd(means.usdLikely)} more` : '';
    const goal = formatQuantity(goalHours, 'h');
    return `It reaches your goal if you live thriftily: ${odds(thrifty)} of 100 outages of ${goal}; as usual ${odds(usual)}.${thriftMeans(means, price)}`;
  },
  /** Where nothing that must run needs power thriftily. */
  thriftAlone: (means: Means) => `Living thriftily means: ${ways.means(means)}.`,
  /** Else a short one behind how long it lasts, with a space before it. */
  bothWays: ({ usual, thrifty }: RouteInWays) =>
    odds(usual) === odds(thrifty)
      ? ' Thriftily the odds are the same.'
      : ` Of 100 such outages it carries ${odds(usual)}, thriftily ${odds(thrifty)}.`,
  /** Behind hours that count on living thriftily, with a space before it. */
  countsOnThrift({ hours }: InWay, means: Means): string {
    const usual =
      hours === null
        ? ''
        : `; as usual it lasts about ${span(hours.likely)}, careful count ${span(hours.careful)}`;
    return ` That counts on living thriftily${usual}.${thriftMeans(means)}`;
  },
};

/** With a space before it; nothing where it is made of nothing that the route carries. */
function thriftMeans(means: Means, price = ''): string {
  const made = ways.means(means);
  return made === '' ? '' : ` Thriftily means${price}: ${made}.`;
}

const odds = ({ share, carefulShare }: InWay) =>
  `${sayShare(share)} (careful ${sayShare(carefulShare)})`;

const tenths = (value: number) => (value < 100 ? Number(value.toFixed(1)) : value);

const ends = ({ low, value, high }: Figure) => ({ low, likely: value, high });

const span = (hours: number) => shown(hours, 'h');

const turn = ({ name, hours }: NamedTurn, between: 'to' | 'until' = 'to') =>
  `${inSentence(name)} from ${sayHours(hours, between)}`;

function effect({ saves }: Measure): string {
  const parts = [
    saves.kwhPerDay >= 0.005 ? `${formatQuantity(saves.kwhPerDay, 'kWh')} a day` : '',
    saves.runningWatts >= 1 ? shown(saves.runningWatts, 'W') : '',
    saves.startVa >= 1 ? `${shown(saves.startVa, 'VA')} at the hardest start` : '',
    saves.packKwhPerDay >= 0.005
      ? `${formatQuantity(saves.packKwhPerDay, 'kWh')} a day that a pack draws for itself`
      : '',
  ].filter((part) => part !== '');
  return `Off ${scopes[saves.of]}: ${parts.join(', ')}.`;
}
