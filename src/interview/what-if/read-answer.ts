import { type Answer, NOT_SURE } from '../answers';
import { checkTyped } from '../check-answer';
import type { Choice, Question } from '../questions/question';
import { whatIfWords } from './what-if-words';

export type ReadAnswer =
  /** `unusual`: more or less than most homes have, which the interview asks back once. */
  | { readonly ok: true; readonly answer: Answer; readonly unusual?: boolean }
  | { readonly ok: false; readonly says: string };

/**
 * A typed answer to a question of any kind, checked as the interview checks it. A choice is typed by its id, or by its words;
 * several with commas between them.
 * @param choices those this home can have
 */
export function readAnswer(
  question: Question,
  typed: string,
  choices: readonly Choice[],
): ReadAnswer {
  const text = typed.trim();
  if (/^(not sure|unsure|i'm not sure)$/i.test(text)) return { ok: true, answer: NOT_SURE };
  if (question.kind === 'choice') {
    const found = choiceOf(question, text, choices);
    return typeof found === 'string' ? no(found) : { ok: true, answer: found.id };
  }
  if (question.kind === 'choices') return severalOf(question, text, choices);
  const read = checkTyped(question, text);
  return read.ok ? { ok: true, answer: read.value, unusual: read.unusual } : no(read.message);
}

function severalOf(question: Question, text: string, choices: readonly Choice[]): ReadAnswer {
  const found: Choice[] = [];
  for (const word of text.split(',')) {
    const one = choiceOf(question, word.trim(), choices);
    if (typeof one === 'string') return no(one);
    found.push(one);
  }
  const alone = found.find((one) => one.alone === true);
  if (alone !== undefined && found.length > 1) return no(whatIfWords.alone(alone.id));
  return { ok: true, answer: [...new Set(found.map(({ id }) => id))] };
}

/** The choice meant, or a sentence that names those there are. */
function choiceOf(question: Question, word: string, choices: readonly Choice[]): Choice | string {
  const small = word.toLowerCase();
  const found = choices.find(
    ({ id, label }) => id.toLowerCase() === small || label.toLowerCase() === small,
  );
  if (found !== undefined) return found;
  const ids = choices.map(({ id }) => id);
  const known = question.choices?.find(({ id }) => id.toLowerCase() === small);
  return known === undefined
    ? whatIfWords.noChoice(word, question, ids)
    : whatIfWords.notHere(known.label, question, ids);
}

const no = (says: string): ReadAnswer => ({ ok: false, says });
