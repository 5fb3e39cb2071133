import type { Home } from '../../home/home';

/** What is known of the service: a question about it, or its volts. */
export type ServiceFactId =
  | 'main-amps'
  | 'panel-bus'
  | 'panel-kind'
  | 'panel-spaces'
  | 'panel-map'
  | 'panel-distance'
  | 'transfer-existing'
  | 'engine-neutral'
  | 'supply-volts';

/** One fact of the electric service, as an electrician wants it. */
export interface ServiceFact {
  readonly what: ServiceFactId;
  /** A number of `unit`, or the choice that was answered; null is not known. */
  readonly value: number | string | null;
  readonly unit: string | null;
  /** `told`: read by the household. */
  readonly how: 'told' | 'assumed' | 'not-known';
}

const asked: readonly (readonly [id: ServiceFactId, unit: string | null])[] = [
  ['main-amps', 'A'],
  ['panel-bus', 'A'],
  ['panel-kind', null],
  ['panel-spaces', 'count'],
  ['panel-map', null],
  ['panel-distance', 'ft'],
  ['transfer-existing', null],
  ['engine-neutral', null],
];

/** The service as the household found it: nothing here is confirmed before an electrician has looked. */
export function serviceFacts({ facts }: Home): ServiceFact[] {
  const found = asked.filter(([id]) => facts.applies(id));
  return [voltsFact(facts), ...found.map(([id, unit]) => factOf(facts, id, unit))];
}

function factOf(facts: Home['facts'], what: ServiceFactId, unit: string | null): ServiceFact {
  const value = facts.value(what);
  if (value === null) return { what, value, unit, how: 'not-known' };
  const how = facts.told(what) ? 'told' : 'assumed';
  return { what, value: unit === null ? String(value) : Number(value), unit, how };
}

/** Where nobody told it, the usual 120/240 V is assumed. */
function voltsFact(facts: Home['facts']): ServiceFact {
  const id = facts.value('supply-volts');
  const told = typeof id === 'string' && facts.told('supply-volts');
  return {
    what: 'supply-volts',
    value: typeof id === 'string' ? id : 'v120-240',
    unit: null,
    how: told ? 'told' : 'assumed',
  };
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
