import { stringify } from 'yaml';
import type { Plan } from '../plan/plan';
import { planData } from '../plan/plan-data';
import { planMarkdown } from '../plan/to-markdown';
import type { Paper } from '../store/write-papers';

/** The papers of a plan: the plan as data, and the plain-language summary. */
export function planPapers(plan: Plan, name: string): Paper[] {
  return [
    {
      file: `${name}.plan.yaml`,
      text: stringify(planData(plan), { lineWidth: 100, aliasDuplicateObjects: false }),
      comment: (text) => `# ${text}`,
    },
    {
      file: `${name}.plan.md`,
      text: planMarkdown(plan),
      comment: (text) => `<!-- ${text} -->`,
    },
  ];
}
