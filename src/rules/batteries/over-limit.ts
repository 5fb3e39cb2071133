import { namedValue } from '../../tables/named-values';
import { sitingDistances } from '../../tables/siting-distances';
import { type Rule, yes } from '../rule';

/** The battery here already holds more than is common for its place. */
export const overLimit: Rule = {
  id: 'over-limit',
  applies: ({ facts }) => {
    const kwh = facts.told('battery-kwh') ? facts.number('battery-kwh') : null;
    if (kwh === null || !facts.has('own-sources', 'home-battery')) return null;
    const inside = facts.is('battery-place', 'utility-room', 'basement');
    const limit = namedValue(
      sitingDistances,
      inside ? 'storage-utility-space-kwh' : 'storage-garage-kwh',
    ).value;
    return kwh > limit ? yes({ code: 'storage-over-limit', kwh, limitKwh: limit }) : null;
  },
};
