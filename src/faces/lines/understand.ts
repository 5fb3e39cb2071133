import { NOT_SURE } from '../../interview/answers';
import type { Event } from '../../interview/event';
import type { Question } from '../../interview/questions/question';
import { offered, questionAt } from '../../interview/questions/relevant';
import { rowsOf } from '../../interview/rows';
import type { Context, State } from '../../interview/state';
import { placeOf } from '../../interview/walk';
import { spokenRows } from './print-view';

/** What a typed line means: something that happens, a wish to see the list or the sums, or a sentence. */
export type Understood =
  | { readonly kind: 'event'; readonly event: Event }
  | { readonly kind: 'show'; readonly what: 'list' | 'sums' }
  | { readonly kind: 'unclear'; readonly says: string };

const happens = (event: Event): Understood => ({ kind: 'event', event });
const unclear = (says: string): Understood => ({ kind: 'unclear', says });

/** Words that mean the same on every screen. */
const words: Readonly<Record<string, Understood>> = {
  back: happens({ type: 'act', act: 'back' }),
  help: happens({ type: 'act', act: 'help' }),
  '?': happens({ type: 'act', act: 'help' }),
  stop: happens({ type: 'act', act: 'stop' }),
  list: { kind: 'show', what: 'list' },
  sums: { kind: 'show', what: 'sums' },
};

/** Understand a line typed at the screen as it stands. */
export function understand(context: Context, state: State, line: string): Understood {
  const text = line.trim();
  const word = words[text.toLowerCase()];
  if (word !== undefined) return word;
  switch (state.view) {
    case 'ask':
      return atQuestion(context, state, text);
    case 'check':
      return atList(context, state, text);
    case 'help':
      return happens({ type: 'act', act: 'back' });
    default:
      return atRows(context, state, text);
  }
}

function atQuestion(context: Context, state: State, text: string): Understood {
  if (/^(unsure|not sure|i'?m not sure)$/i.test(text))
    return happens({ type: 'act', act: 'not-sure' });
  if (/^later$/i.test(text) && placeOf(context.interview, state.at) !== null) {
    return happens({ type: 'act', act: 'later' });
  }
  if (/^draft$/i.test(text)) return happens({ type: 'act', act: 'draft' });
  const question = questionAt(context, state.at);
  if (question.choices === undefined) {
    return text === '' ? unclear('Type your answer, or unsure.') : happens({ type: 'typed', text });
  }
  return chosen(context, state, question, text);
}

function chosen(context: Context, state: State, question: Question, text: string): Understood {
  const choices = offered(context, state, question);
  if (text === '') return unclear('Type the number of a line, or unsure.');
  const parts = question.kind === 'choices' ? text.split(/[,;]| (?=\d)/) : [text];
  const ids: string[] = [];
  for (const part of parts.map((p) => p.trim()).filter((p) => p !== '')) {
    const found = choices.find(
      (c, i) =>
        String(i + 1) === part || c.id === part || c.label.toLowerCase() === part.toLowerCase(),
    );
    if (found === undefined) {
      return unclear(
        `There is no line "${part}". Type a number from 1 to ${choices.length}, or unsure.`,
      );
    }
    ids.push(found.id);
  }
  if (question.kind === 'choice') return happens({ type: 'answer', answer: ids[0] ?? NOT_SURE });
  const alone = choices.find((c) => c.alone && ids.includes(c.id));
  if (alone !== undefined && ids.length > 1) {
    return unclear(`"${alone.label}" stands alone. Type it alone, or leave it out.`);
  }
  return happens({ type: 'answer', answer: [...new Set(ids)] });
}

/** Rows numbered from 1: "1" takes the first. */
function atRows(context: Context, state: State, text: string): Understood {
  const rows = spokenRows(context, state);
  const row = rows[Number(text) - 1];
  if (row?.kind === 'act') return happens({ type: 'act', act: row.act });
  return unclear(`Type a number from 1 to ${rows.length}.`);
}

function atList(context: Context, state: State, text: string): Understood {
  if (/^write$/i.test(text)) return happens({ type: 'act', act: 'write' });
  if (/^walk$/i.test(text)) return happens({ type: 'act', act: 'walk' });
  const rows = rowsOf(context, state);
  const answers = rows.filter((row) => row.kind === 'answer');
  const row = answers[Number(text) - 1];
  if (row?.kind === 'answer') return happens({ type: 'open', question: row.id });
  return unclear(`Type write, or the number of an answer to change, 1 to ${answers.length}.`);
}
