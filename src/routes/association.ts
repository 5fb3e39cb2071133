import type { Home } from '../home/home';
import type { If } from './stops/condition';
import type { Stop } from './stops/stop';

/** A rule told that bars a generator, unless the association has already agreed. */
export function ruleStops({ facts }: Home): Stop[] {
  const barred =
    facts.told('association-rule') &&
    facts.has('association-rule', 'no-generator') &&
    !facts.has('permissions', 'association-ok');
  return barred ? [{ code: 'association-bars-generator' }] : [];
}

/** What the association's rules ask of a generator that may stand there. */
export function ruleIfs({ facts }: Home): If[] {
  return facts.told('association-rule') && facts.has('association-rule', 'quiet-hours')
    ? ['quiet-hours']
    : [];
}
