import interview from '#compiled/questions.js';
import { advise } from '../../../src/advice/advise';
import { liveAdvice } from '../../../src/advice/live-advice';
import { TRIAL_YEARS, trials } from '../../../src/advice/trial';
import { SyntheticYears } from '../../../src/home/weather/synthetic-years';
import { homeFromAnswers } from '../../../src/plan/home-from-answers';
import { missingForAdvice } from '../../../src/plan/sureness/floor-of-answers';
import { allKinds } from '../../../src/routes/all-routes';
import type { Route } from '../../../src/routes/route';
import { size, widths } from '../../advice/list-case';
import { randomHome } from '../../random-home';
import { met, note, type Part } from '../part';

const AS_OF = '2026-11-25';
/** Drawn years of a plan, and fewer where a part is only tried. */
const YEARS = 100;
const LIGHT_YEARS = 5;

/** The route beside the question against that of the plan, for homes made up by chance. */
export const pane: Part = {
  whole: 100,
  of: 'home',
  try: (seed, tally) => compare(seed, tally, YEARS),
  light: (seed, tally) => compare(seed, tally, LIGHT_YEARS),
};

function compare(seed: number, tally: Parameters<Part['try']>[1], years: number): void {
  const answers = randomHome(seed);
  const home = homeFromAnswers(interview, answers, AS_OF);
  if (missingForAdvice(home).length > 0) return;
  const shown = liveAdvice(trials(interview, AS_OF)(answers)).route;
  const planned = (count: number) => {
    const drawn = new SyntheticYears(home, count);
    const kinds = allKinds(home, drawn, widths);
    return { kinds, route: advise(home, drawn, kinds, size).route };
  };
  const alike = (a: Route, b: Route) =>
    a.kind === b.kind && a.way === b.way && a.costUsd.value === b.costUsd.value;
  const few = planned(TRIAL_YEARS).route;
  note(tally, `home ${seed}`, 'on as many years the pane has the route of the plan', [
    ...(alike(shown, few) ? [] : [`${shown.kind} ${shown.way}, the plan ${few.kind} ${few.way}`]),
  ]);
  const whole = planned(years);
  const verdict = whole.kinds.find(({ route }) => route.kind === shown.kind)?.route.verdict;
  note(tally, `home ${seed}`, 'the pane has no route that the plan says cannot be used', [
    ...(verdict === 'cannot' ? [shown.kind] : []),
  ]);
  met(tally, shown.kind === whole.route.kind ? 'the same kind of route' : 'another kind of route');
}
