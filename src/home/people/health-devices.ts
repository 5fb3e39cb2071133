import type { Home, Load } from '../home';

/** A device somebody needs for health, whether life hangs on it or not. */
export function isHealthDevice(load: Load): boolean {
  return load.rank === 'must' && load.restsOn.includes('medical-devices');
}

/** Health hangs on power: a device was named, or nobody knows whether there is one. */
export function healthHangs(home: Home): boolean {
  return home.lifeSupport !== 'no' || home.loads.some(isHealthDevice);
}
