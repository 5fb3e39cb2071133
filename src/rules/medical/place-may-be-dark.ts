import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { lifeDevice } from '../when/life-device';

/** The place to go has no backup of its own, and someone needs power. */
export const placeMayBeDark: Rule = {
  id: 'place-may-be-dark',
  applies: (home) =>
    both(
      home.facts.is('leave-place', 'other-place') ? yes('place-go-lose-power') : null,
      lifeDevice(home),
    ),
};
