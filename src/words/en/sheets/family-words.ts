import type { Dearer } from '../../../advice/list/neighbors';
import type { ByWhen } from '../../../plan/steps/by-when';
import type { StepId } from '../../../plan/steps/next-step';

/** Words of the sheet for the family. */
export const familyWords = {
  title: 'What we decided, and why',
  purpose: 'For everybody here.',
  why: (because: string) => `Why this one: ${because}`,
  cheaper: (line: string) => `Next cheaper, ${line}`,
  dearer: (gain: Dearer['gain'], line: string) =>
    `${gain === 'better' ? 'Next better' : 'As usual, with nothing turned off'}, ${line}`,
  /** Of a neighbor that costs more than was told; the details say what was told. */
  above: (byUsd: string) => ` It is ${byUsd} above your money.`,
  beside: (other: string) => `Beside it: ${other}`,
  /** Of a price above the money told the details say by how much. */
  other: (title: string, price: string, above: boolean, lasting: string) =>
    `${title}, about ${price}${above ? ' (above your money)' : ''}, ${lasting}.`,
  otherHours: (hours: string) => `lasts about ${hours}`,
  otherGas: 'runs while the gas flows',
  otherNone: 'gives no power',
  putRight: 'To put right now',
  steps: 'Steps: what, who, by when',
  step: (what: string, who: string, when: ByWhen) => `${what} (${who}, ${byWhen[when]})`,
  /** Steps that lean on another sheet, or say here no more than what to do. */
  shortSteps: {
    quotes:
      'Give the sheet "Please quote this" to three licensed electricians. Permit and inspection belong in the price.',
    order: 'Take the quote that meets this plan, with permit and inspection in the price.',
    'tell-insurer': 'Tell the insurer, and a landlord or association, and keep the answer.',
  } satisfies Partial<Record<StepId, string>> as Partial<Record<StepId, string>>,
  findOut: 'Worth finding out (how: see the details)',
};

const byWhen: Readonly<Record<ByWhen, string>> = {
  'this-week': 'this week',
  'before-buying': 'before buying',
  'with-purchase': 'after the steps above',
  'before-first-use': 'before first use',
  'before-season': 'before the season',
};
