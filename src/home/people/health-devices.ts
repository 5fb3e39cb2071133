import type { QuestionId } from '#compiled/question-ids.js';
import type { Home, Load } from '../home';

/** A device somebody needs for health, whether life hangs on it or not. */
export function isHealthDevice(load: Load): boolean {
  return load.rank === 'must' && load.restsOn.includes('medical-devices');
}

/** What is told here shows how somebody is, so the load's name goes to no stranger. */
const ofHealth: readonly QuestionId[] = ['medical-devices', 'access-lifts'];

/** A load whose name alone tells that somebody here is ill or cannot climb stairs. */
export const tellsOfHealth = ({ life, restsOn }: Load): boolean =>
  life || ofHealth.some((id) => restsOn.includes(id));

/** Health hangs on power: a device was named, or nobody knows whether there is one. */
export function healthHangs(home: Home): boolean {
  return home.lifeSupport !== 'no' || home.loads.some(isHealthDevice);
}
