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

/**
 * What can kill is printed whole where the household told of it or the route advised brings it; of what nobody told the
 * question is. Where too little is told to advise a route, what was told of it.
 */
export const deadlyWhole: Held = ({ plan, text }) => {
  const { home, advice, assumptions } = plan;
  const without = new Set(findings(home, []).map((one) => one.id));
  const own = findings(home, [advice.route.kind]).filter((one) => one.severity === 5);
  const beside = plan.cautions.filter((one) => one.severity === 5);
  const thin = plan.undecided.length > 0;
  const asked = ({ asks }: (typeof own)[number]) => {
    const open = assumptions.find((one) => one.question === asks);
    return open?.code === 'open-answer' && text.includes(open.ask);
  };
  const brought = new Set(own.filter(({ id }) => !without.has(id)).map((one) => one.id));
  const missing = [...own, ...beside]
    .filter((one) => !thin || !one.careful)
    .filter((one) => !text.includes(says(one)))
    .filter((one) => !one.careful || brought.has(one.id) || !asked(one));
  return faultsIf(
    [...new Set(missing.map((one) => one.id))],
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
