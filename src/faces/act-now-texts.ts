import { dangerSteps, dangersToCheck } from '../interview/dangers';
import type { Interview } from '../interview/questions/question';
import { questionAt } from '../interview/questions/relevant';
import { sayAnswer } from '../interview/say-answer';
import type { State } from '../interview/state';

/** What to do, one instruction a line, under what it is about; no title where it is about all that was told. */
export interface ActNow {
  readonly title: string | null;
  readonly lines: readonly string[];
}

/** What must be read before anything else: for the choices made, or for all that could be when nobody is sure. */
export function actNowTexts(
  interview: Interview,
  { at, ticked }: Pick<State, 'at' | 'ticked'>,
): ActNow[] {
  const { dangers } = interview;
  const question = questionAt({ interview }, at);
  if (at !== dangers.question) {
    const urgent = question.choices?.filter((c) => c.actNow !== undefined && ticked.includes(c.id));
    return (urgent ?? []).map(({ label, actNow = '' }) => ({
      title: label,
      lines: actNow.trim().split('\n'),
    }));
  }
  if (ticked.length > 0) {
    return [{ title: null, lines: dangerSteps(dangers, ticked).map((step) => step.say) }];
  }
  return dangersToCheck(dangers).map(({ id, steps }) => ({
    title: `If it is this: ${sayAnswer(question, id)}`,
    lines: steps.map((step) => step.say),
  }));
}

export function actNowTitle({ ticked }: Pick<State, 'ticked'>): string {
  return ticked.length === 0
    ? 'Check these now, before anything else'
    : 'Do this now, before anything else';
}
