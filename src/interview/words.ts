import type { WalkPlace } from './walk';

/** The sentences of the interview itself. The wording of each question stands in `questions/`. */
export const words = {
  begin: 'Begin',
  notSure: "I'm not sure",
  takes: (says: string, taken: string) => `${says}: until you know, we take "${taken}".`,
  nameTaken: (says: string, name: string) => `${says}: we take "${name}".`,
  takesCareful: (says: string) =>
    `${says}: until you know, we take nothing for granted and plan with care.`,
  later: (place: string) => `I'll look later: put it on my list (${place})`,
  noted: (place: string) =>
    `It is on your list to look at (${place}). Until then we take the careful side.`,
  walk: (count: number) => `My list to look at: ${count}`,
  found: 'Enter what I found, in the order of the list',
  back: 'Go back one question',
  backToPage: 'Back to the page',
  help: 'Why we ask, and how to find out',
  stop: 'Save and stop',
  draft: 'See the answers so far and write a draft plan',
  unusualYes: (said: string) => `Yes, ${said} is right`,
  labelAsk: 'We read this off the label. Is it right?',
  labelYes: 'Yes, take all of it',
  unusualNo: 'No, let me type it again',
  unusualAsk: (said: string) => `${said} is more or less than most homes have. Is it right?`,
  goOn: 'Everyone is safe now. Go on with the questions',
  isOver: 'It is over. Look again at what is dangerous',
  tonight: 'What to do tonight: one short page',
  toPlanning: 'Go on to planning',
  endTonight: 'That is all for now. Stop here',
  stopNow: 'Stop here and deal with it now',
  readBackTitle: 'Before the plan: is all of this so?',
  allSo: 'All of this is so. Write my plan',
  notAllSo: 'Something is not so. Back to my answers',
  writePlan: 'Write my plan',
  toPlan: 'Back to the plan',
  keep: 'Keep the new answer, which is in your file by now, and write the plan again',
  drop: 'Drop it: the old answer comes back, and the plan stays as it was',
  stopChanged: 'Save and stop: the new answer stays in your file, and the plan is as it was',
  changeMore: 'Change another answer too',
  wasTried: (said: string) =>
    `You tried: ${said}. Nothing of it is filled in. To keep it, answer this.`,
  sameAnswer: 'That is the answer the plan has already. Nothing changes.',
  compareTitle: 'What this changes in the plan',
  seePlan: 'See the plan',
  sharpen: (count: number) =>
    `Go on: ${count} ${count === 1 ? 'answer' : 'answers'} would sharpen the figures`,
  more: 'Go on, to make it fit your home',
  writeFirst: 'Write this first plan as a draft',
  answersSoFar: 'Look at my answers',
  understood: (note: string) => `We read that as ${note}.`,
  readFirst: 'Read this first, then choose one of these lines',
  chooseOne: 'Go down to the line you choose, then press Enter.',
  begun: (said: string) => `You began this before and did not enter it: ${said}.`,
  nameToSave: 'Nothing can be saved under this one. Ctrl+C stops at once.',
  moveFirst: 'Go to the line you choose with Up and Down, then press Enter.',
  markFirst: 'Go to your answer with Up and Down, or type its number, then press Enter.',
  tickFirst:
    'Nothing is ticked yet. Go to a line with Up and Down, press Space to tick it, then Enter to go on.',
  tickHere: (line: number) =>
    `Nothing is ticked yet. Press Space to tick a line (now line ${line}), then Enter to go on.`,
  tickOrLeave: (line: number) =>
    `Line ${line} is not ticked. Press Space to tick it; press Enter again to go on without it.`,
  fieldFull: 'This field is full: what goes beyond its end is left out. Ctrl+U empties it.',
  lineTooLong: 'This line is far too long to be an answer. It was not taken.',
  firstQuestion: 'This is the first question, so there is nothing to go back to.',
  empty: {
    number: (says: string, unit: string) =>
      `Type ${numberIn(unit)} for "${says}", or press Tab if you are not sure.`,
    zip: 'Type the five digits of your ZIP code, or press Tab if you are not sure.',
    text: (says: string) => `Type "${says}" as it reads, or press Tab if you are not sure.`,
    name: 'Type a short name for this home, or press Tab and we choose one.',
  },
  noNumber: (typed: string, says: string, unit: string, example: string) =>
    `We could not read "${typed}" as ${numberIn(unit)}. For "${says}" type one in digits, for example ${example}.`,
  otherUnit: (typed: string, says: string, unit: string, example: string) =>
    `"${typed}" is in another unit. For "${says}" type ${numberIn(unit)}, for example ${example}.`,
  severalNumbers: (typed: string, says: string, example: string) =>
    `We could not read "${typed}" as one number. For "${says}" type the likeliest one alone, for example ${example}.`,
  strangeWords: (heard: string, typed: string, says: string, unit: string, example: string) =>
    `We could not read "${heard}" in "${typed}". For "${says}" type ${numberIn(unit)} alone, for example ${example}.`,
  outOfRange: (says: string, bounds: string) =>
    `"${says}" must be between ${bounds}. Type a number in that range.`,
  labelOutOfRange: (says: string, bounds: string) =>
    `"${says}" must be between ${bounds}. Check the number and the unit on the label, and type it again.`,
  decimalComma: (typed: string, says: string, point: string) =>
    `We read "${typed}" as two numbers. If you mean ${point}, type it for "${says}" with a point.`,
  wholeNumber: (says: string) => `Type a whole number for "${says}".`,
  emptyList: (says: string, count: number, unit: string) =>
    `For "${says}" type ${count} numbers in ${unit} with spaces or commas, or press Tab if you are not sure.`,
  listCount: (says: string, found: number, count: number) =>
    `For "${says}" we read ${found} ${found === 1 ? 'number' : 'numbers'} and need ${count}. Leave none out, and put a space or a comma between two numbers.`,
  noNumberInList: (says: string, typed: string, count: number) =>
    `We could not read "${typed}" as a number. For "${says}" type ${count} numbers in digits, with spaces or commas.`,
  outOfRangeInList: (says: string, place: number, said: string, bounds: string) =>
    `Number ${place} of "${says}", ${said}, must be between ${bounds}. Check it and type it again.`,
  noSuchLine: (typed: string, ticks = false) =>
    `No line here has the number ${typed}. ${ticks ? 'Move with Up and Down, tick with Space, then press Enter.' : 'Choose one with Up and Down, then press Enter.'}`,
  textTooLong: (says: string, letters: number, longest: number) =>
    `"${says}" has ${letters} letters, and at most ${longest} fit. Leave out what matters least.`,
  zipShape:
    'A ZIP code has five digits, for example 48911. Type all five, or only the first three.',
  nameHeld: (name: string) =>
    `Some computers keep the name "${name}" for themselves. Type another, for example ${name}-house.`,
  nameShape: 'For the name use letters, digits and dashes only, at most 24, for example oak-house.',
} as const;

/** A place of the walk, short. */
export const placeWord: Readonly<Record<WalkPlace, string>> = {
  panel: 'at the panel',
  furnace: 'at the heating and cooling',
  well: 'at the pumps',
  kitchen: 'in the rooms',
  outdoors: 'outdoors and in the garage',
  papers: 'in my papers',
};

/** How a unit is written in a sentence. */
export const unitWords: Readonly<Record<string, string>> = {
  W: 'watts',
  kW: 'kilowatts',
  A: 'amps',
  V: 'volts',
  h: 'hours',
  min: 'minutes',
  hp: 'horsepower',
  mi: 'miles',
  tons: 'tons',
  kWh: 'kilowatt-hours (kWh)',
  gal: 'gallons',
  ft: 'feet',
  ft2: 'square feet',
  $: 'dollars',
  'c/kWh': 'cents per kWh',
  '%': 'percent',
  F: 'degrees Fahrenheit',
  in: 'inches',
  count: 'a number',
  people: 'people',
  year: 'a year',
  'per year': 'times a year',
};

/** What is to be typed: a bare number where the question itself says what is counted. */
export function numberIn(unit: string): string {
  if (unit === 'year') return 'a year';
  const bare = ['count', 'people', 'per year'].includes(unit);
  return bare ? 'a number' : `a number in ${sayUnit(unit)}`;
}

/** The unit as words, or the unit itself where we have none. */
export function sayUnit(unit: string): string {
  return unitWords[unit] ?? unit;
}
