import type { RuleId } from '../src/tables/rules';
import { english } from '../src/words/en';
import { sayRule } from '../src/words/rule-sentences';

/** What a caution says in English. */
export const says = (caution: { id: RuleId; careful: boolean }) => sayRule(english.rules, caution);
