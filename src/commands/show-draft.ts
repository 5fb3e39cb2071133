import type { ShownDraft } from '../faces/shown-draft';
import type { Draft } from '../plan/draft/draft';
import { sayContradiction } from '../words/en/contradictions/say-contradiction';
import { possibleIf as wouldBe } from '../words/en/household/possible-if';

/** What a face shows of a draft, in words. */
export function showDraft(draft: Draft): ShownDraft {
  const lines = draft.toSettle.map((found) => {
    const { answers, asks } = sayContradiction(found);
    return `Two answers do not fit together. ${answers.join(' ')} ${asks}`;
  });
  const { possible } = draft.glance;
  return { ...draft, lines: [...(possible === null ? [] : [wouldBe.inPane(possible)]), ...lines] };
}
