import type { AddOn } from '../../../plan/steps/add-ons';
import type { Figure } from '../../../quantity/figure';
import { formatQuantity } from '../../../quantity/format-quantity';
import { shown } from '../../../quantity/shown';
import type { OnceStored } from '../../../routes/fuel/once-stored';
import type { Route } from '../../../routes/route';
import { GO_NOW } from '../leaving/say-leaving';
import { inSentence, listOf } from '../list-of';
import { sayPart } from '../parts/say-part';
import { sayRouteTitle } from '../routes/route-titles';
import { sayFigure } from '../say-figure';
import { sayRoomUnits, sayThrift } from '../say-thrift';
import { addOnName, addOnUsd } from '../steps/say-add-on';

const whole = (hours: number) => shown(hours, 'h');

/** The first page. */
export const frontPage = {
  title: (home: string) => `Backup power plan: ${home}`,
  standing: (asOf: string) =>
    `As of ${asOf}. A planning aid, not an electrical design: a licensed electrician, the building department and the local code decide.`,
  draft: (why: readonly string[]) => `DRAFT, not for buying from: ${why.join('; ')}.`,
  job: (job: string) => `The job: ${job}`,
  beforeBuying: (lines: readonly string[]) => `Before anything is bought: ${lines.join(' ')}`,
  hurtsMost: 'What can hurt here most:',
  firstSteps: 'First steps:',
  step: (what: string, who: string) => `${what} (${who})`,

  /** `head`: what a device of life support makes of the purchase. */
  buy(
    { called, parts, costUsd }: Route,
    given: {
      head: 'buy' | 'beside' | 'bridge';
      aboveTold: string;
      installed: boolean;
      thriftUsd: number;
      /** For the one room that the sums count on. */
      roomUnits: readonly AddOn[];
      /** Where the high end of the price is above the money told, with a space before it. */
      highAbove: string;
      /** What comes first where the money of now does not buy all, with a space before it. */
      first: string;
      also: string;
    },
  ): string {
    const head = {
      buy: 'What to buy',
      beside: 'Beside that',
      bridge: 'Beside that, and only as a bridge',
    }[given.head];
    const made = parts.map((part) => inSentence(sayPart(part.called))).join('; ');
    return `${head}: ${inSentence(sayRouteTitle(called))}, ${sayFigure(costUsd)}${given.aboveTold}${given.installed ? ' installed' : ''}: ${made}${sayRoomUnits(given.roomUnits)}${sayThrift(given.thriftUsd)}.${given.highAbove}${given.first}${given.also}`;
  },
  buyNothing: ({ called, parts }: Route, also: string) =>
    `What to buy: nothing. Use ${inSentence(sayRouteTitle(called))}: ${parts.map((part) => inSentence(sayPart(part.called))).join('; ')}.${also}`,
  /** With a space before it. */
  addOns: (addOns: readonly AddOn[]) =>
    ` Worth having beside it: ${addOns
      .map((one) => `${inSentence(addOnName(one))}, ${addOnUsd(one)}`)
      .join('; ')}.`,

  howLong: (says: string, onlyPart: boolean) => `${howLongHead(onlyPart)}: ${says}`,
  /** Hours by both counts, on the fuel of today and once cans are filled, and what was asked for. */
  lasts(given: {
    /** Something that must keep running is not carried: the hours are not those of the home. */
    readonly onlyPart: boolean;
    readonly hours: Figure;
    /** Shown as less than the goal though it rounds to it. */
    readonly justUnder: boolean;
    /** What is here today, where cans are still to be filled. */
    /** Fuel the hours are counted on today, gal; null where it is piped, or none is burned. */
    readonly fuelToday: Figure | null;
    readonly stored: OnceStored | null;
    readonly goalHours: number;
    /** On a hard day. */
    readonly reached: boolean;
    /** Of the outages so long, at least 9 in 10 are carried through all the same. */
    readonly enoughByOdds: boolean;
    readonly carefulFallsShort: boolean;
    /** What else is counted, with a space before it. */
    readonly more: string;
  }): string {
    const { hours, stored, goalHours } = given;
    const likely = `${given.justUnder ? 'just under' : 'about'} ${whole(hours.value)}`;
    const bad = hours.low < 0.5 ? 'none at all' : whole(hours.low);
    const states =
      stored === null ? '' : ` (${sayFuelToday(given.fuelToday)}); ${onceStored(stored)}`;
    const goal = formatQuantity(goalHours, 'h');
    const asked = given.reached
      ? `You asked for ${goal}${given.carefulFallsShort ? '; the careful count falls short' : ''}.`
      : `On a hard day it does not reach the ${goal} you asked for${given.enoughByOdds ? '; it carries at least 9 in 10 such outages' : ''}.`;
    if (stored === null && hours.value === 0)
      return `${howLongHead(given.onlyPart)}: not known yet, and none is counted until you tell more of what it runs on. You asked for ${goal}.${given.more}`;
    return `${howLongHead(given.onlyPart)}: ${likely}, careful count ${bad}${states}. ${asked}${given.more}`;
  },

  needsNoPower: 'What it carries: nothing, and nothing that must keep running needs it.',
  carriesNothing: 'What it carries: nothing; it gives no power.',
  carriesAll: (reach: string) => `What it carries: all that must keep running.${reach}`,
  doesNotCarry: (missed: readonly string[], reach: string, other: string) =>
    `What it does not carry, though it must keep running: ${listOf(missed.map(inSentence))}.${reach}${other}`,
  /** With a space before it. */
  outletsOnly:
    ' It feeds only what has a plug: no ceiling light, no wall outlet, nothing wired in.',
  /** The cheapest route that carries all for the time asked: carrying all for a night is not doing the job. */
  cheapestForAll: ({ called, costUsd }: Route) =>
    ` Cheapest that does the whole job: ${inSentence(sayRouteTitle(called))}, about ${shown(costUsd.value, '$')}.`,

  noHeat: (because: string, staysHere: boolean, room: boolean) =>
    `Expect no heat while the power is out: ${because}.${room ? ' One warm room is within your money; "Ways on" below says how.' : ''}${staysHere ? ' Live in one room, hang a thermometer in it, and leave before it stays below 60 °F.' : ''}`,
  noCooling: (because: string, staysHere: boolean, room: boolean) =>
    `Expect no cooling while the power is out: ${because}.${room ? ' One cool room is within your money; "Ways on" below says how.' : ''} ${staysHere ? 'Have a cool place to go to, and leave before a room stays above 90 °F; a fan alone does not protect above that.' : 'A fan alone does not protect above 90 °F.'}`,
  buildingHeats: 'the building heats your home, and its boiler needs power too',
  /** A unit for one room that nobody may have is not "the" unit of this home. */
  notRun: (names: readonly string[], forOneRoom: boolean) =>
    forOneRoom
      ? `this plan runs no ${listOf(names.map(inSentence))}`
      : `this plan does not carry the ${listOf(names.map(inSentence))}`,

  goWhenTold: `If you are told to go, or fire or fast water is near: ${GO_NOW}`,
  leave: (lines: readonly string[]) => `When to leave. ${lines.join(' ')}`,

  call(given: {
    readonly electrician: 'route' | 'home' | 'nothing';
    readonly permitOffice: boolean;
    readonly gasFitter: boolean;
    readonly powerCompany: boolean;
  }): string {
    const electrician = {
      route: 'a licensed electrician, yes',
      home: 'a licensed electrician, for the home and not for this route',
      nothing: 'no electrician for this route',
    }[given.electrician];
    const others = [
      electrician,
      ...(given.permitOffice ? ['the building department, for permit and inspection'] : []),
      ...(given.gasFitter ? ['a gas fitter, for the fuel'] : []),
      ...(given.powerCompany ? ['the power company, for its approval'] : []),
    ];
    return `Whom to call: ${others.join('; ')}.`;
  },
};

/** Whose hours these are stands before the first of them. */
const howLongHead = (onlyPart: boolean) => (onlyPart ? 'How long for the rest' : 'How long');

/** "with 21 gal stored about 3 days 2 h, careful count 2 days 2 h". */
function onceStored({ gallons, route }: OnceStored): string {
  const { value, low } = route.lasting.hours!;
  const [likely, careful] = [value, low].map(whole);
  const stored = `with ${formatQuantity(gallons, 'gal')} stored about ${likely}`;
  return likely === careful ? stored : `${stored}, careful count ${careful}`;
}

/** "10 gal here". */
function sayFuelToday(fuel: Figure | null): string {
  if (fuel === null) return '';
  const kept = fuel.source.kind !== 'assumed';
  return `${formatQuantity(fuel.value, 'gal')} ${kept ? 'here' : 'not here yet'}`;
}
