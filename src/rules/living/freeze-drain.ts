import { type Rule, yes } from '../rule';
import { both } from '../when/both';
import { firstOf } from '../when/first-of';
import { said } from '../when/said';

/** Pipes that freeze: water heater off first, then drain. */
export const freezeDrain: Rule = {
  id: 'freeze-drain',
  applies: ({ facts, site }) =>
    both(
      said({
        facts,
        id: 'freeze-risk',
        choices: [
          'crawl-pipes',
          'heat-tape',
          'hot-tub',
          'frozen-before',
          'sprinkler',
          'boiler-loop',
        ],
        because: 'Something here can freeze.',
        unknown: 'We do not know whether pipes here can freeze.',
      }),
      firstOf(
        site.coldF <= 32 ? yes('It freezes where you live.') : null,
        facts.has('outage-failed', 'frozen-pipes') ? yes('Pipes have frozen here.') : null,
      ),
    ),
};
