import type { Load } from '../home';
import { isHealthDevice } from '../people/health-devices';

/** Devices for health, and the pumps that keep the house dry: neither living thriftily nor one reading makes them smaller. */
export function neverLessened(load: Load): boolean {
  return load.life || isHealthDevice(load) || load.id === 'sump' || load.id === 'waste';
}
