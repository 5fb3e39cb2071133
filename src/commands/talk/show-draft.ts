import type { ShownDraft, ShownGlance } from '../../faces/shown-draft';
import type { Draft } from '../../plan/draft/draft';
import type { Glance } from '../../plan/draft/glance';
import { sayContradiction } from '../../words/en/contradictions/say-contradiction';
import { possibleIf as wouldBe } from '../../words/en/household/possible-if';
import { sayLoadName } from '../../words/en/loads/say-load-name';
import { sayRouteTitle } from '../../words/en/routes/route-titles';
import { sayIf } from '../../words/en/routes/say-if';

/** What a face shows of a draft, in words. */
export function showDraft(draft: Draft): ShownDraft {
  const lines = draft.toSettle.map((found) => {
    const { answers, asks } = sayContradiction(found);
    return `Two answers do not fit together. ${answers.join(' ')} ${asks}`;
  });
  const { possible } = draft.glance;
  return {
    ...draft,
    loads: draft.loads.map(({ called, ...load }) => ({ ...load, name: sayLoadName(called) })),
    glance: showGlance(draft.glance),
    lines: [...(possible === null ? [] : [wouldBe.inPane(possible)]), ...lines],
  };
}

/** Titles and conditions in words. */
export function showGlance({ route, ...glance }: Glance): ShownGlance {
  if (route === null) return { ...glance, route };
  const { called, ifs, leavesOut, ...rest } = route;
  return {
    ...glance,
    route: {
      ...rest,
      title: sayRouteTitle(called),
      ifs: ifs.map(sayIf),
      leavesOut: leavesOut.map(sayLoadName),
    },
  };
}
