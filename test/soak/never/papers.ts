import { planSchema } from '../../../src/papers/plan-file/plan-schema';
import { visible } from '../../../src/quantity/visible';
import { findings } from '../../../src/rules/find';
import { says } from '../../says';
import { faultsIf, type Held } from '../seen';

/** Words that a broken number or value leaves behind. */
export const BROKEN = /\bNaN\b|Infinity|\.inf\b|\.nan\b|undefined|\[object/;

/** The plan file has the form its schema says. */
export const form: Held = ({ data }) =>
  (planSchema.safeParse(data).error?.issues ?? []).map(
    (issue) => `${issue.path.join('.')}: ${issue.message}`,
  );

/** No broken number and no word that is none. */
export const soundFigures: Held = ({ text, file }) =>
  [text, file].flatMap((paper) => {
    const found = BROKEN.exec(paper);
    return found === null ? [] : [`broken: ${around(paper, found.index)}`];
  });

/** Nothing a terminal would obey or hide. */
export const noControl: Held = ({ text, file }) =>
  faultsIf(
    [text, file].filter((paper) => visible(paper) !== paper).map(() => 'a control byte'),
    'in a paper',
  );

/** What can kill on the route advised is printed whole; where too little is told to advise one, what was told of it. */
export const deadlyWhole: Held = ({ plan, text }) => {
  const own = findings(plan.home, [plan.advice.route.kind]).filter((one) => one.severity === 5);
  const beside = plan.cautions.filter((one) => one.severity === 5);
  const thin = plan.undecided.length > 0;
  const shown = [...own, ...beside].filter((one) => !thin || !one.careful);
  return faultsIf(
    [...new Set(shown.filter((one) => !text.includes(says(one))).map((one) => one.id))],
    'a deadly caution is not printed whole',
  );
};

/** Nobody is told that no permit is needed, or to use a cord with two plugs. */
export const permits: Held = ({ text, file }) =>
  [text, file].flatMap((paper) => [
    ...(/\b(no|without a|without any) permits?\b|permits? (is|are) not (needed|required)/i.test(
      paper,
    )
      ? ['it says that no permit is needed']
      : []),
    ...(/\b(use|buy|make|get) (a |an )?(double-ended|two-plug|backfeed)/i.test(paper)
      ? ['it advises a cord with two plugs']
      : []),
  ]);

function around(text: string, at: number): string {
  return text.slice(Math.max(0, at - 60), at + 30).replaceAll('\n', ' ');
}
