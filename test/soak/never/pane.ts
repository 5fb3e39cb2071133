import interview from '#compiled/questions.js';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import type { Figure } from '../../../src/quantity/figure';
import type { Held } from '../seen';

const draftOf = draftMaker(interview);

/** Once what must run is told, the sums beside the question are those of the plan. */
export const paneAsPlan: Held = ({ answers, plan }) => {
  const pane = draftOf(answers);
  if (!pane.ranked) return null;
  const { must } = plan.home.demand;
  const differ = (what: string, shown: Figure | null, planned: Figure) =>
    Math.abs((shown?.value ?? 0) - planned.value) < 1e-6
      ? []
      : [`${what}: the pane has ${shown?.value}, the plan ${planned.value}`];
  return [
    ...differ('running', pane.runningWatts, must.runningWatts),
    ...differ('start', pane.startVa, must.startVa),
  ];
};
