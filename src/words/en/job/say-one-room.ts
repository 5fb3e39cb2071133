import type { OneRoom } from '../../../plan/one-room';
import { inSentence, listOf } from '../list-of';
import { loadNames } from '../load-names';
import type { Named } from '../named';
import { onlyWhileAwake } from './only-while-awake';

/** What one warm or cool room changes. */
export function sayOneRoom({ told, off, heaterOnlyAwake }: OneRoom, home: Named): string[] {
  const names = new Set(loadNames(home, off).map((name) => `the ${inSentence(name)}`));
  const said = told ? 'You said that one room is enough' : 'We count on one room';
  return [
    `${said}. Off in an outage: ${listOf([...names])}.`,
    ...(heaterOnlyAwake === null ? [] : [`For one room ${onlyWhileAwake(heaterOnlyAwake)}.`]),
  ];
}
