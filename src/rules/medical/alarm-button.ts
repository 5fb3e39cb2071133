import { type Rule, yes } from '../rule';
import { both } from '../when/both';

/** A call button or alarm service hangs on power and a phone line. */
export const alarmButton: Rule = {
  id: 'alarm-button',
  applies: ({ facts }) =>
    both(
      facts.told('people-risk') && facts.has('people-risk', 'over-65', 'alone-often')
        ? yes('someone-over-65-often')
        : null,
      facts.is('phone-works', 'cell') && facts.told('phone-works')
        ? null
        : yes('no-cell-phone-known'),
    ),
};
