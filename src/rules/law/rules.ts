import type { Rule } from '../rule';
import { permitInspection } from './permit-inspection';

/** Permits, consent, money and how far to trust the plan, in printing order. */
export const lawRules: readonly Rule[] = [permitInspection];
