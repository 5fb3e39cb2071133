import type { Answers } from '../../interview/answers';
import type { Interview } from '../../interview/questions/question';
import { readTried } from '../../interview/what-if/read-tried';
import type { Tried, TriedThing } from '../../interview/what-if/tried';
import { type AskAgain, beginWhatIf } from '../../interview/what-if/what-if-state';
import { whatIfWords } from '../../interview/what-if/what-if-words';
import type { WhatIfApart } from '../door';
import type { WhatIfSaid } from '../screen/views/what-if';
import { comparedLines } from './compared-lines';

/** What is typed after a plan was printed, and what it is asked of. */
export interface AfterPlan {
  readonly interview: Interview;
  readonly answers: Answers;
  readonly whatIf: WhatIfApart;
}

/** A line after the plan, understood. */
export type AfterLine =
  | { readonly code: 'change' | 'keep' | 'list' }
  | { readonly code: 'try'; readonly pairs: readonly string[] };

export const AFTER = {
  tried: 'Nothing is written. Type keep to answer it in full, or what if with something else.',
  noneTried: 'Nothing is tried yet. Type what if and what to try, such as: what if goal=48.',
  canTry: 'You can try, one or more at a time:',
  more: 'Also: more or less with one thing that must run, such as less=heat; and any question by its id in the home file.',
} as const;

/** A word, or "what if" with pairs; a value may have spaces, and the first "=" may be left out. */
export function understandAfter(line: string): AfterLine | null {
  const text = line.trim();
  const small = text.toLowerCase();
  if (small === 'change' || small === 'keep') return { code: small };
  const asked = /^what\s*if\b\s*(.*)$/i.exec(text);
  if (asked === null) return null;
  const rest = asked[1]!.trim();
  if (rest === '') return { code: 'list' };
  const pairs = rest.split(/[\s,]+(?=[a-z][a-z0-9-]*=)/i);
  return { code: 'try', pairs: rest.includes('=') ? pairs : [rest.replace(/\s+/, '=')] };
}

/** What can be tried, each with the word to type and how it is now. */
export function canTry(interview: Interview, answers: Answers): string[] {
  const { knobs } = beginWhatIf(interview, answers);
  const own = knobs.filter(({ id }) => id !== 'load');
  return [
    AFTER.canTry,
    ...own.map(({ id, says, places, now }) => `${id}: ${says}, now ${places[now]!.said}.`),
    AFTER.more,
  ];
}

/** Lines to print, or questions to ask again; null: the word is not one of these. */
export type Heard = { readonly print: readonly string[] } | AskAgain | null;

/** What if and change, typed over a plan that is read line by line. What was tried last is what keep means. */
export function afterPlan({ interview, answers, whatIf }: AfterPlan): {
  hear(line: string): Promise<Heard>;
} {
  let tried: readonly TriedThing[] = [];
  return {
    async hear(line) {
      const meant = understandAfter(line);
      if (meant === null) return null;
      if (meant.code === 'change') return { ask: [] };
      if (meant.code === 'list') return { print: canTry(interview, answers) };
      if (!('pairs' in meant)) {
        const ask = [...new Set(tried.flatMap(({ asks }) => asks))];
        const said = tried.filter(({ asks }) => asks.length > 0);
        const was = Object.fromEntries(said.map(({ asks, then }) => [asks[0]!, then]));
        if (ask.length > 0) return { ask, tried: was };
        return { print: [tried.length === 0 ? AFTER.noneTried : whatIfWords.keepsNoSize] };
      }
      const read = readTried(interview, answers, meant.pairs);
      if (!read.ok) return { print: [`Error: ${read.says}`] };
      tried = read.things;
      return { print: await triedLines(whatIf, answers, read) };
    },
  };
}

async function triedLines(
  whatIf: WhatIfApart,
  answers: Answers,
  { tried, things }: { readonly tried: Tried; readonly things: readonly TriedThing[] },
): Promise<string[]> {
  const said = await new Promise<WhatIfSaid>((found) => whatIf.look(answers, tried, found));
  return [
    ...things.map(({ says, now, then }) => `What if. ${says}: ${then}. Now: ${now}.`),
    ...comparedLines(said, { before: 'Now', after: 'What if' }),
    AFTER.tried,
  ];
}
