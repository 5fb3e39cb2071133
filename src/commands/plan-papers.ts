import { planMarkdown } from '../papers/household/to-markdown';
import { planYaml } from '../papers/plan-file/to-yaml';
import type { Plan } from '../plan/plan';
import type { Paper } from '../store/write-papers';

/** The papers of a plan: the plan as data, and the plain-language summary. */
export function planPapers(plan: Plan, name: string): Paper[] {
  return [
    {
      file: `${name}.plan.yaml`,
      text: planYaml(plan),
      comment: (text) => `# ${text}`,
    },
    {
      file: `${name}.plan.md`,
      text: planMarkdown(plan),
      comment: (text) => `<!-- ${text} -->`,
    },
  ];
}
