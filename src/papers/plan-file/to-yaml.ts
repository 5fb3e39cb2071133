import { stringify } from 'yaml';
import type { Plan } from '../../plan/plan';
import type { Words } from '../../words/words';
import { planData } from './plan-data';

/** The plan file: lines of about 100 letters, no anchors, so that it can be read and edited by hand. */
export function planYaml(plan: Plan, words: Words): string {
  return stringify(planData(plan, words), { lineWidth: 100, aliasDuplicateObjects: false });
}
