import type { Home } from '../../home/home';
import type { NextStep } from './next-step';

/** What to agree on for a device somebody depends on; empty where there is none. */
export function medicalSteps(home: Home): NextStep[] {
  if (home.lifeSupport === 'no') return [];
  const careful = home.lifeSupport !== 'yes';
  return [
    { id: 'agree-on-device', careful, who: 'clinician or supplier' },
    { id: 'on-the-lists', careful, who: 'utility' },
  ];
}

/** Alarms come into every plan: to be tested where they hang, to be bought where they are missing. */
export function alarmStep({ facts }: Home): NextStep {
  const told = facts.told('co-alarm');
  const have =
    told && facts.is('co-alarm', 'every-floor')
      ? 'all'
      : told && facts.is('co-alarm', 'some')
        ? 'some'
        : 'none';
  return { id: 'alarms', have, who: 'household' };
}
