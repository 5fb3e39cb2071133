import { planMarkdown } from '../papers/household/to-markdown';
import { planYaml } from '../papers/plan-file/to-yaml';
import type { Plan } from '../plan/plan';
import type { Paper } from '../store/write-papers';
import type { Words } from '../words/words';

/** The papers of a plan: the plan as data, and the plain-language summary. */
export function planPapers(plan: Plan, name: string, words: Words): Paper[] {
  return [
    {
      file: `${name}.plan.yaml`,
      text: planYaml(plan, words),
      comment: (text) => `# ${text}`,
    },
    {
      file: `${name}.plan.md`,
      text: planMarkdown(plan, words),
      comment: (text) => `<!-- ${text} -->`,
    },
  ];
}
