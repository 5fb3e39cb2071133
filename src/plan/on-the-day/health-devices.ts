import type { Load } from '../../home/home';
import { isHealthDevice } from '../../home/people/health-devices';
import type { Plan } from '../plan';

/** The powered devices told, whether or not life hangs on them. */
export function healthDevices({ home }: Plan): Load[] {
  return home.loads.filter(isHealthDevice);
}
