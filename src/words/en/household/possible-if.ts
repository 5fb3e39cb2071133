import type { IfGain, PossibleIf } from '../../../advice/possible-if';
import type { Route } from '../../../routes/route';
import type { ConditionCode, Settler } from '../../../routes/stops/stop-codes';
import { inSentence } from '../list-of';
import { sayRouteTitle } from '../routes/route-titles';
import { sayFigure } from '../say-figure';

const place =
  "there is an open, level place outdoors, 20 feet or more from every door, window and vent, yours and the neighbors'";
const wall =
  'there is a place on an outside wall that the rules allow, above the highest water known here';
const roof =
  'a roof of yours faces east or west, or better, with about 300 square feet in the sun for half the day';
const street = 'gas comes from the street, and the meter and the pipe can feed a generator too';

const conditions: Readonly<Record<ConditionCode, string>> = {
  'generator-place-unknown': place,
  'generator-place-too-close': place,
  'generator-place-enclosed': place,
  'association-bars-generator': 'your association agrees in writing to a generator in an outage',
  'nobody-runs-it':
    'somebody nearby promises to come, who can lift, start and refuel it and work the breakers',
  'gas-source-unknown': street,
  'gas-unknown': street,
  'gas-tank-unknown':
    'a propane tank stands in the yard, and a gas fitter says that it can feed a generator too',
  'owner-not-asked': 'the owner agrees in writing to the wiring',
  'owner-unknown': 'the home is yours, or its owner agrees in writing',
  'panel-in-trouble': 'the electrical panel has been mended and is found sound',
  'battery-place-unknown': wall,
  'battery-in-living-space': wall,
  'battery-below-flood': wall,
  'roof-unknown': roof,
  'roof-full-or-unknown': roof,
};

const settlers: Readonly<Record<Settler, string>> = {
  household: 'You can settle this: go and look.',
  owner: 'The owner settles this.',
  association: 'The association settles this.',
  electrician: 'A licensed electrician settles this.',
  'gas-company': 'The gas company and a gas fitter settle this.',
  helper: 'Ask whoever would come before the outage, and let them try it once.',
};

const gains: Readonly<Record<IfGain, string>> = {
  more: 'More',
  all: 'The whole job',
  'all-for-less': 'The whole job, for less money,',
  'as-much-for-less': 'As much, for less money,',
  'other-way': 'The same in another way',
};

const together = (codes: readonly ConditionCode[]) =>
  [...new Set(codes.map((code) => conditions[code]))].join(', and if ');

/** The step that comes before a purchase. */
export const sayFindOutFirst = (codes: readonly ConditionCode[]) =>
  `Before you buy anything, find out whether ${together(codes)}.`;

/** Routes that something would have to be true for. */
export const possibleIf = {
  title: 'What would be possible, if',
  nothingToBuy: (years: number) =>
    `None of this is to be bought yet. Each stands only if what is said first turns out to be true. Sizes here go by ${years} drawn years; once it is true, the plan sizes it by all of them.`,
  condition: (code: ConditionCode) => conditions[code],
  /** "If the owner agrees in writing to the wiring, and if ... The owner settles this." */
  conditions(codes: readonly ConditionCode[], settles: readonly Settler[]): string {
    const who = [...new Set(settles.map((one) => settlers[one]))];
    return `If ${together(codes)}. ${who.join(' ')}`;
  },
  /** For the first page, where no route is named that is not open yet. */
  onFirstPage: (codes: readonly ConditionCode[], gain: IfGain) =>
    `${gains[gain]} would be possible if ${together(codes)}. Find that out before you buy, and read "What would be possible, if" below, with what can kill.`,
  /** Beside the question, in a line. */
  inPane: ({ conditions: all, gain }: Pick<PossibleIf, 'conditions' | 'gain'>) =>
    `${gains[gain]} would be possible if ${together(all.map(({ code }) => code))}.`,
  route: ({ called, costUsd }: Route, carried: string, howLong: string) =>
    `If so: ${inSentence(sayRouteTitle(called))}, ${sayFigure(costUsd)}. It would carry ${carried} of what must run, ${howLong}.`,
  canKill: (caution: string) => `If so, this can kill: ${caution}`,
};
