import { questionAt } from '../../interview/questions/relevant';
import { rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';
import { placeOf } from '../../interview/walk';

/** The words that can be typed at a question, whatever it asks. */
export function lineWords(context: Context, state: State): string[] {
  const later = placeOf(context.interview, questionAt(context, state.at).id) !== null;
  const draft = rowsOf(context, state).some((row) => row.kind === 'act' && row.act === 'draft');
  return [
    'unsure',
    ...(later ? ['later'] : []),
    'help',
    'back',
    'list',
    'sums',
    ...(draft ? ['draft'] : []),
    'stop',
  ];
}

/** Those that were not said yet, after what to type; help says all of them again. */
export function sayNewWords(words: readonly string[], said: ReadonlySet<string>): string {
  const fresh = words.filter((word) => !said.has(word));
  if (fresh.length === 0) return '';
  const again = said.has('help') ? '' : ' (help says these words again)';
  return `; or: ${fresh.join(', ')}${again}`;
}
