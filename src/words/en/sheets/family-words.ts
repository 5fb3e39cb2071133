import type { ByWhen } from '../../../plan/steps/by-when';

/** Words of the sheet for the family. */
export const familyWords = {
  title: 'What we decided, and why',
  purpose: 'For everybody who lives here.',
  why: (because: string) => `Why this one: ${because}`,
  cheaper: (line: string) => `Next cheaper, ${line}`,
  better: (line: string) => `Next better, ${line}`,
  beside: (other: string) => `Beside it: ${other}`,
  other: (title: string, price: string, lasting: string) => `${title}, about ${price}, ${lasting}.`,
  otherHours: (hours: string) => `lasts about ${hours}`,
  otherGas: 'runs while the gas flows',
  otherNone: 'gives no power',
  putRight: 'To put right now',
  steps: 'Steps: what, who, by when',
  step: (what: string, who: string, when: ByWhen) => `${what} (${who}, ${byWhen[when]})`,
  findOut: 'Worth finding out',
};

const byWhen: Readonly<Record<ByWhen, string>> = {
  'this-week': 'this week',
  'before-buying': 'before buying',
  'with-purchase': 'after the steps before it',
  'before-first-use': 'before first use',
  'before-season': 'before the season',
};
