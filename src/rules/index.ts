import { batteryRules } from './batteries/rules';
import { generatorRules } from './generators/rules';
import { lawRules } from './law/rules';
import { livingRules } from './living/rules';
import { medicalRules } from './medical/rules';
import { nowRules } from './now/rules';
import type { Rule } from './rule';
import { wiringRules } from './wiring/rules';

/** Every rule, in the order in which rules of one severity are printed. */
export const rules: readonly Rule[] = [
  ...nowRules,
  ...medicalRules,
  ...generatorRules,
  ...livingRules,
  ...batteryRules,
  ...wiringRules,
  ...lawRules,
];
