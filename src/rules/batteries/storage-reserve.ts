import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { fixedBattery } from '../when/fixed-battery';

/** A battery that works on the bill may be empty when the storm comes. */
export const storageReserve: Rule = {
  id: 'storage-reserve',
  applies: (home, routes) => {
    const { facts } = home;
    const shifts =
      facts.is('bill-plan', 'time-of-use', 'demand') ||
      facts.has('other-aims', 'lower-bills', 'use-solar');
    return both(shifts ? yes('battery-also-work-bill') : null, fixedBattery(home, routes));
  },
};
