import rules from '#compiled/words/en/rules.js';
import type { PlanChanges } from '../../../plan/changes/changes-between';
import type { CautionFact } from '../../../plan/changes/plan-facts';
import type { SaidChanges } from '../../../plan/changes/said-changes';
import type { RuleId } from '../../../tables/rules';
import { sayRule } from '../../rule-sentences';
import { firstSentence } from '../first-sentence';
import { ASPECT_NAMES, sayAspect } from './say-facts';

/** Two plans of one home laid side by side. */
export function sayChanges(changes: PlanChanges): SaidChanges {
  const { before, after, aspects, cautionsCome, cautionsGo, nothing } = changes;
  const years = after.drawnYears;
  return {
    rows: aspects.map(({ code, changed }) => ({
      name: ASPECT_NAMES[code],
      before: sayAspect(before, code),
      after: sayAspect(after, code),
      changed,
    })),
    come: cautionsCome.flatMap(sayCome),
    go: cautionsGo.flatMap(sayGone),
    nothing: nothing ? 'Nothing of the plan changes.' : null,
    basis:
      years < 100
        ? `Quick figures from ${years} of the plan's drawn years, so odds are rounded down, and hours counted over those years too.`
        : `Counted from ${years} drawn years.`,
  };
}

/** From here on a caution is about what can kill, and is never cut short. */
const CAN_KILL = 5;

function sayCome(one: CautionFact): string[] {
  if (!isKnown(one.id)) return [];
  const says = sayRule(rules, { id: one.id, careful: one.careful });
  return [one.severity >= CAN_KILL ? says : firstSentence(says)];
}

/** A rule that this program no longer has is not said. */
function sayGone(one: CautionFact): string[] {
  if (!isKnown(one.id)) return [];
  return [firstSentence(sayRule(rules, { id: one.id, careful: one.careful }))];
}

const isKnown = (id: string): id is RuleId => Object.hasOwn(rules, id);
