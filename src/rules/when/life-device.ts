import type { Home } from '../../home/home';
import { lifeDevices } from '../../home/people/life-support';
import { careful, type Trigger, yes } from '../rule';

/** Someone's life may hang on a powered device. Not known, or kept private: careful. */
export function lifeDevice(home: Home): Trigger | null {
  const { facts } = home;
  if (facts.told('medical-devices') && facts.has('medical-devices', ...lifeDevices)) {
    return yes('someone-needs-powered-device');
  }
  if (home.lifeSupport === 'yes') return yes('someone-depends-powered-device');
  const hidden = facts.has('medical-devices', 'prefer-not-to-say');
  if (hidden || facts.open('medical-devices') || home.lifeSupport === 'unknown') {
    return careful('not-known-someone-depends-powered-device', 'medical-devices');
  }
  return null;
}
