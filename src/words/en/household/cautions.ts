import type { RuleFigure, Who } from '../../../rules/rule';
import { inSentence } from '../list-of';
import { sayLoadName } from '../loads/say-load-name';
import { sayFigure } from '../say-figure';

const at = { start: 'at the start', running: 'while it runs', 'at-208-volts': 'at 208 V' } as const;

/** The cautions. */
export const cautions = {
  title: 'Cautions',
  wrongAsItIs: 'You told us of these. They are wrong as they are, whatever you buy:',
  canKill: 'These can kill. Read them aloud once:',
  canInjure: 'These can injure, burn or flood:',
  canFail: 'These keep the backup from working, or cost money (in full in the plan file):',
  who: (who: readonly Who[]) => `(Who: ${who.join(', ')}.)`,
  /** A figure of this home behind a caution, with a space before it: "Your well pump: 9,120 VA (...) at the start." */
  figure: (one: RuleFigure) =>
    ` Your ${inSentence(sayLoadName(one.called))}: ${sayFigure(one.figure)} ${at[one.at]}.`,
  otherSeason: (season: 'winter' | 'summer') =>
    `For an outage in ${season}, though you asked for the other season:`,
  unasked: 'These hold until an answer says otherwise:',
  settleTitle: 'Questions to settle',
  settleMeans:
    'Nobody has answered these. Until somebody does, each counts as the unsafe answer; the plan file has every caution that hangs on it.',
  toSettle: (title: string, ask: string, gravest: string) =>
    `${title}: ${ask} Until then: ${gravest}`,
  also: (rest: readonly string[]) => `Also: ${rest.join(' ')}`,
};
