import type { Home } from '../../home/home';
import { outOfSeason } from '../../plan/cautions/out-of-season';
import type { Reason } from '../../rules/reason';
import type { Finding } from '../../rules/rule';
import { sayRule } from '../../words/rule-sentences';
import type { Words } from '../../words/words';
import { figureData } from './figure-data';
import type { PlanData } from './plan-schema';

export function cautionData(home: Home, c: Finding, words: Words): PlanData['cautions'][number] {
  return {
    id: c.id,
    severity: c.severity,
    says: sayRule(words.rules, c),
    who: [...c.who],
    because: { code: codeOf(c.because), says: words.reason(c.because) },
    figures: (c.figures ?? []).map((one) => ({
      load: one.load,
      at: one.at,
      figure: figureData(one.figure, words),
    })),
    outOfSeason: outOfSeason(home, c.id),
    careful: c.careful,
    asks: c.asks ?? 'no one question',
    proof: words.rules[c.id].proof ?? 'none asked',
    cite: words.cite(c.cite),
  };
}

const codeOf = (reason: Reason) => (typeof reason === 'string' ? reason : reason.code);
