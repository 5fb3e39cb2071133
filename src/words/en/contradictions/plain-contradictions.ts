import type { PlainMismatch } from '../../../plan/contradictions/contradiction';
import type { SaidContradiction } from './said-contradiction';

/** Two answers that do not fit together, where there is no figure to name. */
export const plainContradictions: Readonly<Record<PlainMismatch, SaidContradiction>> = {
  'gas-heat-without-gas': {
    answers: [
      'A gas or propane furnace heats most of the home.',
      'The home has no piped gas and no propane tank.',
    ],
    asks: 'What does the furnace burn? If it burns gas, there is a gas meter at the wall or a tank in the yard.',
  },
  'interlock-without-main': {
    answers: [
      'The panel has no single main breaker.',
      'A sliding plate (interlock) is fitted at the main breaker.',
    ],
    asks: 'Is there a main breaker after all? A sliding plate needs one to slide against. Do not use it before an electrician has looked.',
  },
  'inlet-without-switch': {
    answers: [
      'The generator feeds the house through an inlet or fixed wiring.',
      'No switch moves the house over from the grid.',
    ],
    asks: 'Is there a sliding plate or a second box after all? Without one, power flows out to the street and can kill a line worker. Do not use the inlet before an electrician has looked.',
  },
  'life-without-second-way': {
    answers: ['Somebody depends on a powered device.', 'There is no second way yet.'],
    asks: 'What keeps the person safe when every source in the house fails? Agree on it with the clinician and the supplier.',
  },
  'nobody-for-engine': {
    answers: [
      'Nobody here can lift, start and refuel a generator.',
      'There is a portable generator.',
    ],
    asks: 'Who would move, start and refuel the generator? Without somebody it does not count.',
  },
  'battery-below-flood': {
    answers: [
      'The battery would go in the basement.',
      'Water has been in the garage, the basement or the home.',
    ],
    asks: 'Is there a place above the highest water? A flooded battery can burn days later.',
  },
};
