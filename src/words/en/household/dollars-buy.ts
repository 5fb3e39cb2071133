import type { Line } from '../../../advice/list/line';
import type { Dearer } from '../../../advice/list/neighbors';
import type { Season } from '../../../home/home';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import { inSentence, listOf } from '../list-of';
import { sayRouteTitle } from '../routes/route-titles';
import { usd } from '../say-dollars';
import { sayToldMoney } from '../told-money';
import { sayShare } from './share';

/** A line as the household reads it. */
export interface LineSaid {
  readonly line: Line;
  /** Under which the picture shows it. */
  readonly letter: string;
  readonly goalHours: number;
  readonly advised: boolean;
  /** The money told, $; null where none was. */
  readonly budgetUsd: number | null;
  /** Of it, what is for later, $. */
  readonly laterUsd: number;
}

/** What each dollar buys. */
export const dollarsBuy = {
  title: 'What each dollar buys',
  intro: (goalHours: number, season: Season, careful: boolean) =>
    `All routes, sizes, fuel and ways of living, weighed together: these nothing beats in money and in what they do. Counted are outages of ${hoursOf(goalHours)} that start in ${season}${careful ? ', by the careful count, for health may hang on power' : ''}.`,
  /** "B. $860: plug-in power pack of 1 kWh, living thriftily: carries all 4, through more than 99 of 100 such outages." */
  line({ line, letter, goalHours, advised, budgetUsd, laterUsd }: LineSaid): string {
    const { value } = line;
    if (line.route === null) return `${letter}. ${whatItDoes(line, goalHours)}`;
    const devices =
      value.devices === null
        ? ''
        : ` The devices alone: through ${sayShare(value.devices / 100)} of 100.`;
    const marks = [
      ...(line.reaches ? [' It does what you asked for: at least 9 in 10 such outages.'] : []),
      ...(budgetUsd !== null && !line.withinBudget
        ? [` It is ${usd(line.usd - budgetUsd)} above ${sayToldMoney(budgetUsd, laterUsd)}.`]
        : []),
      ...(advised ? [' **This is the one advised.**'] : []),
    ];
    return `${letter}. ${whatItDoes(line, goalHours)}${devices}${marks.join('')}`;
  },
  /**
   * The same for the sheet of the family: what it costs, what it is, what it carries and what not, and for how long; where it lasts less
   * long by the careful count than the one advised, both counts.
   */
  inShort(
    line: Line,
    missed: readonly string[] = [],
    lessCareful: Dearer['lessCareful'] = null,
  ): string {
    const { hours } = line;
    if (line.route === null) return whatItDoes(line, 0);
    const long = hours === null ? endless(line) : `about ${hoursOf(hours.likely)} on a hard day`;
    return `${whatItCarries(line)}${sayMissed(missed)}, ${long}${lessCareful === null ? '' : sayLess(lessCareful)}.`;
  },
  madeOf: 'What each is made of:',
  parts: (letter: string, parts: readonly string[], extraUsd: number) =>
    `${letter}. ${[...parts, ...(extraUsd > 0 ? [`what living thriftily takes, ${usd(extraUsd)}`] : [])].join('; ')}.`,
  thriftily:
    'Living thriftily means what costs little and needs less power: lanterns for ceiling lights, cold food kept cold in turns, things used by turns.',
};

/** "$860: plug-in power pack of 1 kWh, living thriftily: carries all 4 that must run, through more than 99 of 100 ..." */
function whatItDoes(line: Line, goalHours: number): string {
  if (line.route === null)
    return line.ownThere
      ? '$0: nothing bought: only what the things you have can run goes on when the outage begins.'
      : '$0: nothing bought: what needs power stops when the outage begins.';
  return `${whatItCarries(line)}, ${howFar(line, goalHours)}.`;
}

function whatItCarries(line: Line): string {
  const thrifty = line.way === 'thrifty' ? ', living thriftily' : '';
  const { carried, of } = line.carried;
  const some = carried === of ? `all ${of}` : `${carried} of ${of}`;
  const things = of === 1 && carried === of ? 'the one thing' : some;
  return `${usd(line.usd)}: ${inSentence(sayRouteTitle(line.route!.called))}${sizeOf(line)}${thrifty}: ${does(line)} ${things} that must run`;
}

/** What gives no power carries nothing: lanterns, a camp stove and the like do the work instead. */
const does = ({ route }: Line) => (route?.carries.length === 0 ? 'stands in for' : 'carries');

const hoursOf = (hours: number) => shown(hours, 'h');

function sizeOf({ route, storedGal }: Line): string {
  const sizes = [
    ...(route!.generator === null
      ? []
      : [`${formatQuantity(Math.round(10 * route!.generator.ratedKw) / 10, 'kW')}`]),
    ...(route!.nameplateKwh === null ? [] : [formatQuantity(route!.nameplateKwh, 'kWh')]),
    ...(route!.solarKw === null ? [] : [`${formatQuantity(route!.solarKw, 'kW')} of panels`]),
    ...(storedGal === null ? [] : [`${formatQuantity(storedGal, 'gal')} of fuel kept`]),
  ];
  return sizes.length === 0 ? '' : ` (${sizes.join(', ')})`;
}

/** The odds where all is carried through some outages; the hours of a hard day where it is not. */
function howFar(line: Line, goalHours: number): string {
  const { value, hours, carried } = line;
  const long =
    hours === null
      ? endless(line)
      : `about ${hoursOf(hours.likely)} on a hard day (careful count ${hoursOf(hours.careful)})`;
  if (carried.carried < carried.of && value.odds === 0) return long;
  return `through ${sayShare(value.odds / 100)} of 100 outages of ${hoursOf(goalHours)}; ${long}`;
}

/** So many things named tell which they are; of more the count tells enough. Our judgement. */
const NAMED = 2;

/** ", not the furnace". */
const sayMissed = (names: readonly string[]) =>
  names.length === 0 || names.length > NAMED ? '' : `, not the ${listOf(names.map(inSentence))}`;

/** " (careful count 11 h, against 31 h of the one advised)". */
const sayLess = ({ hours, advisedHours }: NonNullable<Dearer['lessCareful']>) =>
  ` (careful count ${hoursOf(hours)}, against ${advisedHours === null ? 'no end foreseen' : hoursOf(advisedHours)} of the one advised)`;

/** Without an end in sight. */
const endless = ({ route }: Line): string =>
  route?.carries.length === 0 ? 'with no power at all' : 'while the gas flows';
