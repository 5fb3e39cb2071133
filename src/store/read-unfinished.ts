import { isScalar, isSeq, type Node } from 'yaml';
import type { Question } from '../interview/questions/question';

export type ReadUnfinished =
  | { readonly begun: string | readonly string[] }
  | { readonly says: string };

/** What was typed or ticked in a question and not entered, as a home file holds it; or a sentence that says what to do. */
export function readUnfinished(question: Question, node: Node | null): ReadUnfinished {
  if (question.kind === 'choices') {
    const ids = isSeq(node)
      ? node.items.map((item) => String(isScalar(item) ? item.value : ''))
      : [];
    const known = question.choices!.map((choice) => choice.id);
    const wrong = ids.find((id) => !known.includes(id));
    if (wrong !== undefined)
      return { says: `"${wrong}" is no choice of "${question.id}". ${REMOVE}` };
    return isSeq(node) ? { begun: ids } : { says: `this should be a list. ${REMOVE}` };
  }
  if (question.choices === undefined && isScalar(node) && node.value !== null) {
    const { value, source } = node;
    return { begun: typeof value === 'string' ? value : String(source ?? value) };
  }
  return { says: `nothing can stand unfinished like this in "${question.id}". ${REMOVE}` };
}

const REMOVE = 'Take this line out; it is no answer.';
