import interview from '#compiled/questions.js';
import { actNowChoices } from '../faces/act-now-texts';
import { wrapText } from '../faces/screen/line';
import { questionAt } from '../interview/relevant';
import type { State } from '../interview/state';

/** What to do now about the dangers named, once more: the screen that said it is gone. */
export function dangerWords({ at, ticked }: State, columns = 80): string {
  const width = Math.min(columns, 80);
  return actNowChoices(questionAt({ interview }, at), ticked)
    .flatMap(({ label, actNow = '' }) => [...wrapText(label, width), ...steps(actNow, width), ''])
    .join('\n');
}

/** Each sentence on lines of its own. */
function steps(actNow: string, width: number): string[] {
  const sentences = actNow.trim().split(/(?<=[.!?])\s+/);
  return sentences.flatMap((sentence) => wrapText(sentence, width - 2).map((line) => `  ${line}`));
}
