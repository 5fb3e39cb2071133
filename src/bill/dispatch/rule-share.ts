import { ceilingYear } from './ceiling-year';
import { dispatchYear, type Strategy, type YearSetting } from './dispatch-year';

export interface RuleShare {
  /** $ a year the rule saves, and the most anything could. */
  readonly savings: number;
  readonly ceiling: number;
  /** Savings over ceiling; null when there is nothing to save. */
  readonly share: number | null;
  /** Why the rule falls short, where it keeps less than nine tenths; else null. */
  readonly short: Shortfall | null;
}

/** What a rule does not see. */
export type Shortfall =
  | 'worst-hour-of-month' // a demand charge is set by it, and nobody knows it beforehand
  | 'price-of-hour'
  | 'room-for-sun'
  | 'guesses-from-last-week';

/** Less than this much a year is nothing to save, $. */
const nothingToSave = 1;

/** How much of the ceiling a rule keeps over a year, and why not more. */
export function ruleShare(setting: YearSetting, strategy: Strategy): RuleShare {
  const savings = dispatchYear(setting, strategy).savings;
  const ceiling = ceilingYear(setting).savings;
  if (ceiling < nothingToSave) return { savings, ceiling, share: null, short: null };
  const share = savings / ceiling;
  return { savings, ceiling, share, short: share < 0.9 ? shortfall(setting, strategy) : null };
}

function shortfall(setting: YearSetting, strategy: Strategy): Shortfall {
  if (setting.layout.demandPrice.length > 0) return 'worst-hour-of-month';
  if (strategy === 'self-use') return 'price-of-hour';
  return strategy === 'time-shift' ? 'room-for-sun' : 'guesses-from-last-week';
}
