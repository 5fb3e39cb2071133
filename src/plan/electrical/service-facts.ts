import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../../home/home';
import { formatQuantity } from '../../quantity/format-quantity';

/** One fact of the electric service, as an electrician wants it. */
export interface ServiceFact {
  readonly what: string;
  readonly value: string;
  readonly how: 'read by the household' | 'assumed' | 'not known';
}

const asked: readonly (readonly [id: QuestionId, what: string, unit: string | null])[] = [
  ['main-amps', 'Main breaker', 'A'],
  ['panel-bus', 'Panel bus', 'A'],
  ['panel-kind', 'Kind of panel', null],
  ['panel-spaces', 'Free spaces', 'count'],
  ['panel-map', 'Circuit labels', null],
  ['panel-distance', 'Panel to outside wall', 'ft'],
  ['transfer-existing', 'Transfer equipment there now', null],
  ['engine-neutral', 'Neutral of the generator there now', null],
];

/** The service as the household found it: nothing here is confirmed before an electrician has looked. */
export function serviceFacts({ facts }: Home): ServiceFact[] {
  const found = asked.filter(([id]) => facts.applies(id));
  return [voltsFact(facts), ...found.map(([id, what, unit]) => factOf(facts, id, what, unit))];
}

function factOf(
  facts: Home['facts'],
  id: QuestionId,
  what: string,
  unit: string | null,
): ServiceFact {
  const value = facts.value(id);
  if (value === null) return { what, value: 'not known', how: 'not known' };
  const how = facts.told(id) ? 'read by the household' : 'assumed';
  const said =
    unit === null ? String(value).replaceAll('-', ' ') : formatQuantity(Number(value), unit);
  return { what, value: said, how };
}

function voltsFact(facts: Home['facts']): ServiceFact {
  const what = 'Supply';
  const said = { 'v120-only': '120 V', 'v120-208': '120/208 V', 'v120-240': '120/240 V' };
  const id = facts.value('supply-volts');
  if (typeof id !== 'string') return { what, value: '120/240 V', how: 'assumed' };
  const how = facts.told('supply-volts') ? 'read by the household' : 'assumed';
  return { what, value: said[id as keyof typeof said], how };
}

/** Line-to-line volts of the supply: 240, 208, or null where there is one 120 V leg only. */
export function lineVolts({ facts }: Home): 240 | 208 | null {
  if (facts.is('supply-volts', 'v120-only')) return null;
  return facts.is('supply-volts', 'v120-208') ? 208 : 240;
}

/** Main breaker as read, A; null when it was not read: a service is never guessed. */
export function mainAmps({ facts }: Home): number | null {
  return facts.told('main-amps') ? facts.number('main-amps') : null;
}

/** Rating of the panel's bus as read, A; null when it was not read. */
export function busAmps({ facts }: Home): number | null {
  return facts.told('panel-bus') ? facts.number('panel-bus') : null;
}
