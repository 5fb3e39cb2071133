import type { ChoiceId } from '#compiled/question-ids.js';
import type { ServiceFact, ServiceFactId } from '../../../plan/electrical/service-facts';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence } from '../list-of';
import { sentenceCase } from '../sentence-case';

type Chosen = Extract<
  ServiceFactId,
  'supply-volts' | 'panel-kind' | 'panel-map' | 'transfer-existing' | 'engine-neutral'
>;

const names: Readonly<Record<ServiceFactId, string>> = {
  'main-amps': 'Main breaker',
  'panel-bus': 'Panel bus',
  'panel-kind': 'Kind of panel',
  'panel-spaces': 'Free spaces',
  'panel-map': 'Circuit labels',
  'panel-distance': 'Panel to outside wall',
  'transfer-existing': 'Transfer equipment there now',
  'engine-neutral': 'Neutral of the generator there now',
  'supply-volts': 'Supply',
};

/** What was chosen, by question. */
const choices: { readonly [Id in Chosen]: Readonly<Record<ChoiceId<Id>, string>> } = {
  'supply-volts': {
    'v120-only': '120 V',
    'v120-208': '120/208 V',
    'v120-240': '120/240 V',
  },
  'panel-kind': {
    'no-main': 'no main',
    fuses: 'fuses',
    'split-bus': 'split bus',
    'main-breaker': 'main breaker',
  },
  'panel-map': { all: 'all', some: 'some', none: 'none' },
  'transfer-existing': {
    'not-known': 'not known',
    none: 'none',
    'manual-switch': 'manual switch',
    interlock: 'interlock',
    automatic: 'automatic',
  },
  'engine-neutral': { bonded: 'bonded', floating: 'floating', switchable: 'switchable' },
};

const known: Readonly<Record<ServiceFact['how'], string>> = {
  told: 'read by the household',
  assumed: 'assumed',
  'not-known': 'not known',
};

/** One fact of the service: what it is, what was found, and how that is known. */
export function sayServiceFact({ what, value, unit, how }: ServiceFact): {
  what: string;
  value: string;
  how: string;
} {
  return { what: names[what], value: sayValue(what, value, unit), how: known[how] };
}

function sayValue(what: ServiceFactId, value: ServiceFact['value'], unit: string | null): string {
  if (value === null) return 'not known';
  if (typeof value === 'number') return formatQuantity(value, unit ?? '');
  const said: Readonly<Record<string, string>> = what in choices ? choices[what as Chosen] : {};
  return said[value] ?? value;
}

/** Several facts known the same way, in a line: "Read by the household: main breaker 200 A; panel bus 200 A." */
export function sayServiceTogether(facts: readonly ServiceFact[], how: ServiceFact['how']): string {
  const said = facts
    .map(sayServiceFact)
    .map(({ what, value }) =>
      how === 'not-known' ? inSentence(what) : `${inSentence(what)} ${value}`,
    );
  return `${sentenceCase(known[how])}: ${said.join('; ')}.`;
}
