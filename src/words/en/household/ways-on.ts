import type { OneRoom, Timetable, WaysOn } from '../../../advice/ways-on/ways-on';
import { shown } from '../../../quantity/shown';
import type { MustCarried } from '../../../routes/must-carried';
import { inSentence, listOf } from '../list-of';
import { theRoute } from '../routes/route-titles';
import { sayBetweenBlocks, sayRunHours } from '../say-between-blocks';
import { usd } from '../say-dollars';
import { sentenceCase } from '../sentence-case';
import { warmOrCool } from '../warm-or-cool';
import { sayShare } from './share';

/** What would be done without, as a household reads it. */
export interface LessSaid {
  readonly names: readonly string[];
  /** The home is then without heat, or cooling, where that harms. */
  readonly heat: boolean;
  readonly cool: boolean;
}

/** Ways on where nothing within the money does the whole job. */
export const waysOn = {
  title: 'Ways on',
  intro: (goalHours: number, oneRoom: WaysOn['oneRoom']) =>
    oneRoom?.doesItWithin
      ? `Nothing within your money carries all that must run for ${span(goalHours)} with the whole home kept ${warmOrCool(oneRoom, 'and')}. With one ${warmOrCool(oneRoom, 'or')} room in its place something does, the last of these; talk them over before you buy.`
      : `Nothing within your money carries all that must run for ${span(goalHours)}. Each of these would change that, or come nearer; talk them over before you buy.`,
  moreMoney(way: WaysOn['moreMoney']): string {
    if (way === null) return 'More money: no route that is open here does it at any price.';
    const { line, moreUsd } = way;
    return `More money: ${usd(moreUsd)} more, ${usd(line.usd)} in all, buys ${titleOf(line)}. It carries all that must run for the time you asked.`;
  },
  littleMore({ line, moreUsd }: NonNullable<WaysOn['littleMore']>): string {
    return `A little more money: ${usd(moreUsd)} more, ${usd(line.usd)} in all, buys ${titleOf(line)}. It carries ${howMany(line.carried)} that must run, but does not reach the time you asked: it lasts ${lasting(line)}.`;
  },
  shorterGoal(way: WaysOn['shorterGoal']): string {
    if (way === null)
      return 'A shorter goal: nothing within your money carries all that must run, for any time worth planning.';
    return `A shorter goal: ${span(way.hours)}. That long ${titleOf(way.line)}, ${usd(way.line.usd)}, carries all that must run in 9 of 10 outages.`;
  },
  lessCarried(way: WaysOn['lessCarried'], less: LessSaid): string {
    if (way === null)
      return 'Less carried: doing without one thing or a few does not make the rest last. What health or a dry house hangs on is not counted as what may go.';
    return `Less carried: without the ${listOf(less.names.map(inSentence))}, ${titleOf(way.line)}, ${usd(way.line.usd)}, carries the rest for the time you asked.${less.heat ? NO_HEAT : ''}${less.cool ? NO_COOLING : ''}`;
  },
  /** The heater goes into a wall outlet, as the list of ways to need less says. */
  oneRoom(way: OneRoom, goalHours: number): string {
    const { line } = way;
    const far = line.reaches
      ? `carries all that must run then through ${sayShare(line.value.odds / 100)} of 100 outages of ${span(goalHours)}`
      : `carries it for ${lasting(line)}`;
    return `One ${room(way)} for all of you, in place of the whole home: ${titleOf(line)}, ${usd(line.usd)}, with about ${usd(way.unitsUsd)} for ${unit(way)}, ${far}.`;
  },
  timetable(way: Timetable): string {
    return [
      `By a timetable: ${timetableWords(way)}. All else stands still between those hours. No odds here count on it.`,
      ...sayBetweenBlocks(way),
    ].join(' ');
  },
  /** The ways that lead somewhere, in one line for the first page. */
  onFrontPage(
    { moreMoney, littleMore, shorterGoal, lessCarried, oneRoom, timetable }: WaysOn,
    less: LessSaid,
  ): string {
    const whole = [
      ...(moreMoney === null
        ? []
        : [
            `${usd(moreMoney.moreUsd)} more (${usd(moreMoney.line.usd)} in all) for ${titleOf(moreMoney.line)}`,
          ]),
      ...(oneRoom?.line.reaches && !oneRoom.doesItWithin ? [roomWith(oneRoom)] : []),
    ];
    const within = oneRoom?.doesItWithin
      ? [`within your money, for the whole job: ${roomWith(oneRoom)}.`]
      : [];
    const smaller = [
      ...(shorterGoal === null ? [] : [`a goal of ${span(shorterGoal.hours)}`]),
      ...(lessCarried === null ? [] : [doingWithout(less)]),
    ];
    const ways = [
      ...within,
      ...(whole.length === 0 ? [] : [`for the whole job: ${whole.join('; or ')}.`]),
      ...(smaller.length === 0 ? [] : [`for a smaller job: ${smaller.join('; or ')}.`]),
    ];
    const near = [
      ...(littleMore === null
        ? []
        : [
            `${usd(littleMore.moreUsd)} more (${usd(littleMore.line.usd)} in all) for ${titleOf(littleMore.line)}, which carries ${howMany(littleMore.line.carried)} that must run for ${lasting(littleMore.line)}`,
          ]),
      ...(oneRoom === null || oneRoom.line.reaches
        ? []
        : [`${roomWith(oneRoom)}, for ${lasting(oneRoom.line)}`]),
      ...(timetable === null ? [] : [timetableWords(timetable)]),
    ];
    const nearer = near.length === 0 ? '' : ` Nearer to it: ${near.join('; or ')}.`;
    return ways.length === 0
      ? `Ways on: none of more money, a shorter goal or fewer things does ${nearer === '' ? 'it' : 'all of it'} here.${nearer} Plan to leave.`
      : `Ways on, ${ways.join(' Or, ')}${nearer}`;
  },
  /** The step of a household that said it needs the whole home, or was not asked. */
  decideOnRoom: (way: OneRoom, asked: boolean) =>
    `Decide together whether one ${room(way)} is enough for all of you; if it is, ${asked ? 'change that answer' : 'tell us so'} and plan again before you buy. ${sentenceCase(unitsWith(way))} ${way.doesItWithin ? 'then do the whole job within your money' : `are within your money, and keep one ${room(way)} for ${lasting(way.line)}`}.`,
  leaveWhenItEnds: (hours: number | null) =>
    `When to leave: ${hours === null ? 'before it ends' : `before it ends, after about ${span(hours)}`}, or as soon as the room stays below 60 °F or above 90 °F.`,
};

const NO_HEAT =
  ' There is no heat then: live in one room, hang a thermometer in it, and leave before it stays below 60 °F.';
const NO_COOLING =
  ' There is no cooling then: have a cool place to go to, and leave before a room stays above 90 °F; a fan alone does not protect above that.';

/** "doing without the furnace and refrigerator (no heat then)". */
function doingWithout({ names, heat, cool }: LessSaid): string {
  const lost = [...(heat ? ['heat'] : []), ...(cool ? ['cooling'] : [])];
  const then = lost.length === 0 ? '' : ` (no ${lost.join(' and no ')} then)`;
  return `doing without the ${listOf(names.map(inSentence))}${then}`;
}

/** "one warm room in place of the whole home, with the vehicle on an inlet, $850, and $60 for a plug-in heater". */
const roomWith = (way: OneRoom) =>
  `one ${room(way)} in place of the whole home, with ${unitsWith(way)}`;

const unitsWith = (way: OneRoom) =>
  `${titleOf(way.line)}, ${usd(way.line.usd)}, and about ${usd(way.unitsUsd)} for ${unit(way)}`;

const room = (way: OneRoom) => `${warmOrCool(way, 'or')} room`;

/** "the generator run only from 6 to 9 am and 5 to 9 pm, so that 25 gal last about 4 days 22 h". */
const timetableWords = (way: Timetable) =>
  `the generator run only ${sayRunHours(way.runHours)}, so that ${shown(way.gallons, 'gal')} last about ${span(way.hours)}${notFor(way)}`;

function notFor({ roomCools, roomWarms }: Timetable): string {
  if (!roomCools && !roomWarms) return '';
  const which = roomCools && roomWarms ? 'cold or hot' : roomCools ? 'cold' : 'hot';
  return ` (not where a ${which} room makes someone ill)`;
}

function unit({ heats, cools }: OneRoom): string {
  const heater = 'a listed plug-in heater on a wall outlet';
  const cooler = 'a window unit of the variable-speed (inverter) kind';
  return heats && cools ? `${heater} and ${cooler}` : heats ? heater : cooler;
}

const howMany = ({ carried, of }: MustCarried) =>
  carried === of ? 'all' : `${carried} of the ${of}`;

const lasting = ({ hours }: OneRoom['line']) =>
  hours === null
    ? 'as long as the fuel comes'
    : `about ${span(hours.likely)} on a hard day (careful count ${span(hours.careful)})`;

const span = (hours: number) => shown(hours, 'h');

function titleOf({ route, way }: NonNullable<WaysOn['moreMoney']>['line']): string {
  return `${theRoute(route!.called)}${way === 'thrifty' ? ' (living thriftily)' : ''}`;
}
