import type { Asked, LaidLine, QuoteCaution, Standing } from '../../../plan/quote/lay-beside';
import type { Quote, QuotedTransfer, QuoteLine } from '../../../plan/quote/quote';
import { formatQuantity, formatRange } from '../../../quantity/format-quantity';
import { inSentence, listOf } from '../list-of';

/** Names of the ten lines. */
export const lineNames: Readonly<Record<QuoteLine, string>> = {
  priceUsd: 'Price',
  usableKwh: 'Usable kWh',
  continuousWatts: 'Watts at once, for as long as wanted',
  startingVa: 'Starts',
  transfer: 'How the house is moved over',
  leavesOut: 'What it leaves out',
  permitIncluded: 'Permit and inspection',
  licenseNamed: 'License and insurance',
  warrantyYears: 'Warranty',
  weeks: 'Weeks until it works',
};

const transfers: Readonly<Record<QuotedTransfer, string>> = {
  none: 'nothing',
  interlock: 'a sliding plate listed for your panel',
  'transfer-switch': 'a listed transfer switch',
  automatic: 'listed equipment that takes over by itself',
};

/** What the plan asks, said by sort of line. */
function plan({ line, asked }: LaidLine, transferAsked: QuotedTransfer): string {
  if (asked !== null) return sayAsked(asked);
  switch (line) {
    case 'transfer':
      return transferAsked === 'interlock'
        ? `${transfers.interlock}, or ${transfers['transfer-switch']}`
        : transfers[transferAsked];
    case 'leavesOut':
      return 'everything on the list of the sheet is carried';
    case 'permitIncluded':
      return 'in the price';
    case 'licenseNamed':
      return 'both named, with date and signature';
    case 'warrantyYears':
      return 'in writing, for this place and this use';
    default:
      return 'none asked';
  }
}

function sayAsked({ low, likely, high, unit }: Asked): string {
  if (unit === 'weeks') return `${low} to ${high} weeks`;
  return low === high ? formatQuantity(likely, unit) : formatRange(low, likely, high, unit);
}

const units: Partial<Record<QuoteLine, string>> = {
  priceUsd: '$',
  usableKwh: 'kWh',
  continuousWatts: 'W',
  startingVa: 'VA',
};

function quoted(line: QuoteLine, quote: Quote, names: readonly string[]): string {
  const value = quote[line];
  if (value === null) return 'does not say';
  if (line === 'transfer') return transfers[quote.transfer!];
  if (line === 'leavesOut') return names.length === 0 ? 'nothing' : listOf(names.map(inSentence));
  if (line === 'warrantyYears') return `${value} years`;
  if (line === 'weeks') return `${value} weeks`;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return formatQuantity(Number(value), units[line]!);
}

/** What to ask, by line and how it stands; a line that does needs no question. */
const asks: Readonly<Record<QuoteLine, Partial<Record<Standing, string>>>> = {
  priceUsd: {
    silent: 'What does it come to in all, with permit and work?',
    under: 'What is not in it? Lay it line by line beside the list of parts.',
    over: 'What makes it more: the panel, the trench, the permit? What can be left for later?',
  },
  usableKwh: {
    silent: 'How many kWh can be used, new and after five years?',
    less: 'How long does it carry the list on a hard day? What goes off first?',
  },
  continuousWatts: {
    silent: 'How many watts for hours on end, at the height and the heat here?',
    less: 'Which of the things on the list may not run together?',
    'likely-only': 'Will it do when everything draws at its high end? Show the sum.',
  },
  startingVa: {
    silent: 'How many starting VA, and will you show it with the largest motor?',
    less: 'Which motor will not start? Would a soft starter help?',
    'likely-only': 'Will it start the largest motor with the rest on, shown by a test?',
  },
  transfer: {
    silent: 'Which listed equipment keeps both sources from ever being on together?',
    less: 'Nothing keeps your power off the line. Which listed equipment will be fitted?',
    'likely-only': 'Somebody must be home to switch it over. Is that so for every outage?',
  },
  leavesOut: {
    silent: 'Which of the things on the list does it not carry?',
    less: 'What would it take to carry these too?',
    'likely-only': 'Why are these left out, and what would they add?',
  },
  permitIncluded: {
    silent: 'Who takes out the permit, and is it in the price?',
    less: 'Put permit and inspection into the price, in writing.',
  },
  licenseNamed: {
    silent: 'What is your license number, and who insures the work?',
    less: 'What is your license number, and who insures the work?',
  },
  warrantyYears: { silent: 'How many years, on what, and does it hold for backup here?' },
  weeks: {
    silent: 'When does it work, with the permit and the power company counted?',
    over: 'What takes so long, and what is there to bridge it?',
  },
};

const standings: Readonly<Record<Standing, string>> = {
  does: 'It is enough.',
  'likely-only': 'It is enough by the likely count, not by the careful one.',
  less: 'It is not enough.',
  under: 'It is below the range of the plan.',
  over: 'It is above the range of the plan.',
  silent: '',
  'not-asked': 'The plan asks for none.',
};

/** Of what is no count, the question says enough; of money and weeks there is a range. */
function stands(line: QuoteLine, standing: Standing): string {
  const counted = line === 'usableKwh' || line === 'continuousWatts' || line === 'startingVa';
  if (counted || standing === 'not-asked' || standing === 'under' || standing === 'over')
    return standings[standing];
  const inRange = standing === 'does' && (line === 'priceUsd' || line === 'weeks');
  return inRange ? 'It is within the range of the plan.' : '';
}

/** "Price. The plan: $1,770 ($900 to $3,400). The quote: $2,400. It is within the range of the plan." */
export function sayLaidLine(
  laid: LaidLine,
  quote: Quote,
  given: { readonly transferAsked: QuotedTransfer; readonly leftOut: readonly string[] },
): string {
  const { line, standing } = laid;
  const ask = asks[line][standing];
  const how = stands(line, standing);
  return [
    `${lineNames[line]}.`,
    ...(standing === 'not-asked' ? [] : [`The plan: ${plan(laid, given.transferAsked)}.`]),
    `The quote: ${quoted(line, quote, given.leftOut)}.`,
    ...(how === '' ? [] : [how]),
    ...(ask === undefined ? [] : [`Ask: ${ask}`]),
  ].join(' ');
}

/** What a quote lacks, before the rule that says why. */
export function sayQuoteCaution(
  code: QuoteCaution,
  missed: { readonly devices: readonly string[]; readonly must: readonly string[] },
): string {
  const names = (all: readonly string[]) => listOf(all.map(inSentence));
  switch (code) {
    case 'no-permit':
      return 'The quote has no permit and inspection in it. Sign nothing before they are in the price, in writing.';
    case 'no-license':
      return 'The quote names no license and insurance. Ask for both, and look them up, before you sign.';
    case 'no-transfer':
      return 'The quote has nothing that keeps the backup and the grid apart. Do not take it as it is.';
    case 'leaves-out-device':
      return `The quote leaves out the ${names(missed.devices)}. Health hangs on it: do not take it as it is.`;
    case 'leaves-out-must':
      return `The quote leaves out what must keep running: ${names(missed.must)}.`;
    case 'too-weak-to-start':
      return 'The quote is too weak to start what must start. A source that trips gives no power at all.';
  }
}

/** Around the lines. */
export const beside = {
  title: (home: string) => `A quote beside the plan: ${home}`,
  /** The route the quote is held against. */
  against: (route: string) => `The plan it is held against: ${inSentence(route)}.`,
  draft: 'The plan is a draft: settle what is open before you sign anything.',
  tooEarly: 'Too little is told for a plan yet, so no quote can be held against it.',
  nothing: 'This plan buys no power, so there is nothing to hold a quote against.',
  cautions: 'Before you sign',
  lines: 'Line by line',
  after:
    'A licensed electrician, the inspector and the local code decide. When it is in place and tested, tell the interview what you have: the plan then counts on that.',
  unknownLoad: (id: string, near: string | null) =>
    `leavesOut: "${id}" is no circuit of this plan.${near === null ? '' : ` Did you mean "${near}"?`}`,
};

/** A quote file to fill in: each line with what belongs there. */
export const blankQuote = {
  head: 'A quote that came back, to lay beside the plan: lampkeeper compare HOME THIS-FILE. Take out the mark before a line and fill it in; what the quote does not say stays as it is.',
  lines: {
    priceUsd: 'in all, with permit and work, dollars',
    usableKwh: 'of the battery, as it can be used, kWh',
    continuousWatts: 'for as long as wanted, watts',
    startingVa: 'for the moment of a start, VA; where it says watts, those',
    transfer: 'none, interlock, transfer-switch or automatic',
    leavesOut: 'what it does not carry, by the names below; [] where it carries all',
    permitIncluded: 'true or false: permit and inspection are in the price',
    licenseNamed: 'true or false: license number and insurance are named',
    warrantyYears: 'years',
    weeks: 'weeks until it works',
  } satisfies Readonly<Record<QuoteLine, string>>,
  circuits: 'Names for leavesOut:',
};
