import { practice } from '../../tables/practice-figures';
import { type Check, said, told } from './contradiction';

/** Share of the main from which a car charger is out of keeping with it. */
const LARGE_CHARGER_SHARE = practice('large-charger-share');

export const chargerOnSmallService: Check = (home) => {
  const [car, main] = [told(home, 'ev-breaker'), told(home, 'main-amps')];
  if (car === null || main === null || car < LARGE_CHARGER_SHARE * main) return null;
  return {
    id: 'charger-on-small-service',
    asks: 'Is the breaker of the car charger, or that of the house, read wrong? If both are right, a load calculation or a listed load manager is needed.',
    answers: [`The car charger's breaker is ${car} A.`, `The main breaker is ${main} A.`],
    questions: ['ev-breaker', 'main-amps'],
  };
};

export const mainOverBus: Check = (home) => {
  const [main, bus] = [told(home, 'main-amps'), told(home, 'panel-bus')];
  if (main === null || bus === null || main <= bus) return null;
  return {
    id: 'main-over-bus',
    asks: "Which number is right? A main larger than the panel may carry is an electrician's first job.",
    answers: [`The main breaker is ${main} A.`, `The panel's label says ${bus} A.`],
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
    asks: 'Is there a main breaker after all? A sliding plate needs one to slide against. Do not use it before an electrician has looked.',
    answers: [
      'The panel has no single main breaker.',
      'A sliding plate (interlock) is fitted at the main breaker.',
    ],
    questions: ['panel-kind', 'transfer-existing'],
  };
};

export const inletWithoutSwitch: Check = (home) => {
  if (!said(home, 'engine-connect', 'inlet') || !said(home, 'transfer-existing', 'none')) {
    return null;
  }
  return {
    id: 'inlet-without-switch',
    asks: 'Is there a sliding plate or a second box after all? Without one, power flows out to the street and can kill a line worker. Do not use the inlet before an electrician has looked.',
    answers: [
      'The generator feeds the house through an inlet or fixed wiring.',
      'No switch moves the house over from the grid.',
    ],
    questions: ['engine-connect', 'transfer-existing'],
  };
};
