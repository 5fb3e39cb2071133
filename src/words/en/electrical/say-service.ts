import type { ServiceFact, ServiceFactId } from '../../../plan/electrical/service-facts';
import { formatQuantity } from '../../../quantity/format-quantity';
import { inSentence } from '../list-of';
import { sentenceCase } from '../sentence-case';

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

const supplies: Readonly<Record<string, string>> = {
  'v120-only': '120 V',
  'v120-208': '120/208 V',
  'v120-240': '120/240 V',
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
  // The choices of these questions are English words already.
  return what === 'supply-volts' ? supplies[value]! : value.replaceAll('-', ' ');
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
