import type { Home } from '../../home/home';
import type { NextStep } from './next-steps';

/** What to agree on for a device somebody depends on; empty where there is none. */
export function medicalSteps(home: Home): NextStep[] {
  if (home.lifeSupport === 'no') return [];
  const agree =
    'gree with the clinician and the equipment supplier: how long each device may be without power, a second way that needs no power from this house, and when to leave.';
  return [
    {
      id: 'agree-on-device',
      what:
        home.lifeSupport === 'yes'
          ? `A${agree}`
          : `If somebody here depends on a powered device: a${agree}`,
      who: 'clinician or supplier',
    },
    {
      id: 'on-the-lists',
      what: `${home.lifeSupport === 'yes' ? 'Put' : 'Then put'} the household on the power company's and the supplier's lists. A list gives warning; it does not keep the power on.`,
      who: 'utility',
    },
  ];
}

/** Alarms come into every plan: to be tested where they hang, to be bought where they are missing. */
export function alarmStep({ facts }: Home): NextStep {
  const told = facts.told('co-alarm');
  if (told && facts.is('co-alarm', 'every-floor')) {
    return {
      id: 'alarms',
      what: 'Test the carbon monoxide alarms you have: press each button, and read the date on the back, for most last 5 to 10 years.',
      who: 'household',
    };
  }
  const missing =
    told && facts.is('co-alarm', 'some')
      ? 'the carbon monoxide alarms that are missing'
      : 'carbon monoxide alarms';
  return {
    id: 'alarms',
    what: `Buy and place ${missing}, with batteries, so that one hangs on each floor and by the bedrooms; then press the button of each.`,
    who: 'household',
  };
}

/** The trial run, and what it needs where a life-support device is here. */
export function rehearsal(home: Home): string {
  const base =
    'Rehearse it once on a mild day, in daylight, with two adults, before the season starts.';
  if (home.lifeSupport === 'no') return base;
  return `${base} With a life-support device: only with the clinician's agreement and the tested second source already running.`;
}
