import { practice } from '../../tables/practice-figures';
import { type Check, said, told } from './contradiction';

/** Share of the main from which a car charger is out of keeping with it. */
const LARGE_CHARGER_SHARE = practice('large-charger-share');

export const chargerOnSmallService: Check = (home) => {
  const [car, main] = [told(home, 'ev-breaker'), told(home, 'main-amps')];
  if (car === null || main === null || car < LARGE_CHARGER_SHARE * main) return null;
  return {
    id: 'charger-on-small-service',
    chargerAmps: car,
    mainAmps: main,
    questions: ['ev-breaker', 'main-amps'],
  };
};

export const mainOverBus: Check = (home) => {
  const [main, bus] = [told(home, 'main-amps'), told(home, 'panel-bus')];
  if (main === null || bus === null || main <= bus) return null;
  return {
    id: 'main-over-bus',
    mainAmps: main,
    busAmps: bus,
    questions: ['main-amps', 'panel-bus'],
  };
};

export const fuseWithInterlock: Check = (home) => {
  if (
    !said(home, 'panel-kind', 'fuses', 'no-main', 'split-bus') ||
    !said(home, 'transfer-existing', 'interlock')
  )
    return null;
  return {
    id: 'interlock-without-main',
    questions: ['panel-kind', 'transfer-existing'],
  };
};

export const inletWithoutSwitch: Check = (home) => {
  if (!said(home, 'engine-connect', 'inlet') || !said(home, 'transfer-existing', 'none')) {
    return null;
  }
  return {
    id: 'inlet-without-switch',
    questions: ['engine-connect', 'transfer-existing'],
  };
};
