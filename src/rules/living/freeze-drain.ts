import { hasHotTub } from '../../home/loads/hot-tub';
import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';

/** Pipes that freeze: water heater off first, then drain. */
export const freezeDrain: Rule = {
  id: 'freeze-drain',
  applies: ({ facts, site }) =>
    both(
      firstOf(
        hasHotTub(facts) ? yes('something-freeze') : null,
        said({
          facts,
          id: 'freeze-risk',
          choices: ['crawl-pipes', 'heat-tape', 'frozen-before', 'sprinkler', 'boiler-loop'],
          because: 'something-freeze',
          unknown: 'not-known-pipes-freeze',
        }),
      ),
      firstOf(
        site.coldF <= 32 ? yes('freezes-where-live') : null,
        facts.has('outage-failed', 'frozen-pipes') ? yes('pipes-frozen') : null,
      ),
    ),
};
