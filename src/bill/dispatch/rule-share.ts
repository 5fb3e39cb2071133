import { ceilingYear } from './ceiling-year';
import { dispatchYear, type Strategy, type YearSetting } from './dispatch-year';

export interface RuleShare {
  /** $ a year the rule saves, and the most anything could. */
  readonly savings: number;
  readonly ceiling: number;
  /** Savings over ceiling; null when there is nothing to save. */
  readonly share: number | null;
  /** Why the rule falls short, where it keeps less than nine tenths; else empty. */
  readonly says: string;
}

/** Less than this much a year is nothing to save, $. */
const nothingToSave = 1;

/** How much of the ceiling a rule keeps over a year, and why not more. */
export function ruleShare(setting: YearSetting, strategy: Strategy): RuleShare {
  const savings = dispatchYear(setting, strategy).savings;
  const ceiling = ceilingYear(setting).savings;
  if (ceiling < nothingToSave) return { savings, ceiling, share: null, says: '' };
  const share = savings / ceiling;
  return { savings, ceiling, share, says: share < 0.9 ? shortfall(setting, strategy) : '' };
}

function shortfall(setting: YearSetting, strategy: Strategy): string {
  if (setting.layout.demandPrice.length > 0) {
    return 'a demand charge is set by the one worst hour of a month, which nobody knows beforehand';
  }
  if (strategy === 'self-use') return 'it takes no account of the price of the hour';
  if (strategy === 'time-shift') return 'it leaves no room for the sun of the day';
  return 'it guesses sun and load from the last seven days';
}
