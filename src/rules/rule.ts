import type { QuestionId } from '#compiled/question-ids.js';
import type { Home } from '../home/home';
import type { LoadName } from '../home/loads/load-name';
import type { RouteTraits } from '../kinds/route-traits';
import type { Cite } from '../quantity/cite';
import type { Figure } from '../quantity/figure';
import type { RuleId, RuleRow } from '../tables/rules';
import type { Reason } from './reason';

/** Who may do the work or must be asked. */
export type Who = RuleRow['who'][number];

export type Severity = RuleRow['severity'];

/** A figure of this home that a rule speaks about, and what it is a figure of. */
export interface RuleFigure {
  /** Id of the load it belongs to. */
  readonly load: string;
  readonly called: LoadName;
  readonly at: 'start' | 'running' | 'at-208-volts';
  readonly figure: Figure;
}

/** Why a rule speaks: a fact of this home, or something we do not know and so treat as unsafe. */
export interface Trigger {
  readonly because: Reason;
  readonly careful: boolean;
  /** The open question whose answer would settle it; left out where no one question would. */
  readonly asks?: QuestionId;
  /** Figures of this home to show beside the caution. */
  readonly figures?: readonly RuleFigure[];
}

/** The traits of the routes under discussion. A rule never learns which routes they are. */
export type Routes = readonly RouteTraits[];

/** One rule: when it applies to this home with these routes under discussion. How grave it is stands in the table, its words in `words`. */
export interface Rule {
  readonly id: RuleId;
  /** Null when the rule has nothing to say. Never guesses: an open safety answer is careful. */
  applies(home: Home, routes: Routes): Trigger | null;
}

/** A rule that applies, as a code; `words` says it. */
export interface Finding extends Trigger {
  readonly id: RuleId;
  readonly severity: Severity;
  readonly who: readonly Who[];
  /** Told by the household, it is something in use or in place that harms as it is. */
  readonly wrongAsItIs: boolean;
  readonly cite: Cite;
}

/** An electrician is the first to call. */
export const isElectricians = ({ who }: Pick<Finding, 'who'>) => who[0] === 'licensed electrician';

export function yes(because: Reason): Trigger {
  return { because, careful: false };
}

export function careful(because: Reason, asks?: QuestionId): Trigger {
  return { because, careful: true, asks };
}
