import { type Document, isMap, isScalar, isSeq, type Node, Pair, Scalar, type YAMLMap } from 'yaml';
import type { Answer, Answers } from '../interview/answers';
import type { Interview, Question } from '../interview/questions/question';
import { answerNode, commentOf, quoted, UNFINISHED_COMMENT } from './answer-node';
import { UNFINISHED_KEY } from './home-file';
import { parseYaml } from './parse-yaml';
import type { KeptHome } from './write-home';

/** What is to stand otherwise in a home file: an answer, or null where it goes. */
export interface Changes {
  readonly answers: Readonly<Record<string, Answer | null>>;
  readonly unfinished: KeptHome['unfinished'];
  readonly asOf: string | null;
}

/**
 * The text of a home file that is sound, with these changes in it. Every other line, comment and key stays where it
 * is; a new answer goes where its question is asked.
 */
export function editHome(text: string, interview: Interview, changes: Changes): string {
  const doc = parseYaml(text)?.doc as Document | undefined;
  const top = doc?.contents;
  if (doc === undefined || !isMap(top)) throw new RangeError('a home file holds a map');
  if (changes.asOf !== null) top.set('asOf', quoted(changes.asOf));
  if (!isMap(top.get('answers', true))) top.set('answers', doc.createNode({}));
  const answers = top.get('answers', true) as unknown as YAMLMap<Scalar, Node>;
  // Written as "{}" while it was empty: lines of their own from now on.
  answers.flow = false;
  for (const question of interview.questions) {
    const answer = changes.answers[question.id];
    if (answer === null) remove(answers, question);
    else if (answer !== undefined) put(doc, answers, interview, question, answer);
  }
  const { unfinished = {} } = changes;
  if (Object.keys(unfinished).length === 0) top.delete(UNFINISHED_KEY);
  else setUnfinished(doc, top as never, unfinished);
  return doc.toString({ lineWidth: 0, flowCollectionPadding: false });
}

/** Which answers of `after` differ from those of `before`, and which are gone. */
export function changesOf(before: Answers, after: Answers): Record<string, Answer | null> {
  const ids = new Set([...Object.keys(before), ...Object.keys(after)]);
  const changed = [...ids].filter((id) => !sameAnswer(before[id], after[id]));
  return Object.fromEntries(changed.map((id) => [id, after[id] ?? null]));
}

export function sameAnswer(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}

function put(
  doc: Document,
  answers: YAMLMap<Scalar, Node>,
  interview: Interview,
  question: Question,
  answer: Answer,
): void {
  const value = answerNode(doc, question, answer);
  const there = answers.items.find(({ key }) => key.value === question.id);
  if (there !== undefined) {
    // A remark behind the old answer stays; one answer of many has its remark behind its first line.
    value.comment = there.value?.comment ?? null;
    value.commentBefore = there.value?.commentBefore ?? null;
    if (isSeq(value) && !value.flow && value.comment !== null) {
      value.commentBefore = value.comment;
      value.comment = null;
    }
    there.value = value;
    return;
  }
  const order = new Map(interview.questions.map(({ id }, i) => [id, i]));
  const mine = order.get(question.id)!;
  const later = answers.items.findIndex(
    ({ key }) => isScalar(key) && (order.get(String(key.value)) ?? -1) > mine,
  );
  const at = later < 0 ? answers.items.length : later;
  if (at === 0) giveToFirst(answers);
  const key = new Scalar(question.id);
  key.commentBefore = commentOf(question);
  answers.items.splice(at, 0, new Pair<Scalar, Node>(key, value));
}

/** An answer that goes takes our own line above it along, and nobody else's. */
function remove(answers: YAMLMap<Scalar, Node>, question: Question): void {
  giveToFirst(answers);
  const at = answers.items.findIndex(({ key }) => key.value === question.id);
  if (at < 0) return;
  const notes = (answers.items[at]!.key.commentBefore ?? '')
    .split('\n')
    .filter((line) => line !== '' && line !== commentOf(question));
  answers.items.splice(at, 1);
  const next = answers.items[at]?.key;
  if (notes.length === 0) return;
  if (next === undefined)
    answers.comment = [answers.comment ?? '', ...notes].filter(Boolean).join('\n');
  else next.commentBefore = [...notes, next.commentBefore ?? ''].filter(Boolean).join('\n');
}

/** The reader hands the lines above the first key to the whole block; they belong to that key. */
function giveToFirst(answers: YAMLMap<Scalar, Node>): void {
  const first = answers.items[0]?.key;
  if (first === undefined || !answers.commentBefore) return;
  first.commentBefore = [answers.commentBefore, first.commentBefore].filter(Boolean).join('\n');
  answers.commentBefore = null;
}

function setUnfinished(
  doc: Document,
  top: YAMLMap<Scalar, Node>,
  unfinished: NonNullable<KeptHome['unfinished']>,
): void {
  const value = doc.createNode(unfinished);
  const there = top.items.find(({ key }) => key.value === UNFINISHED_KEY);
  if (there !== undefined) {
    there.value = value as never;
    return;
  }
  const key = new Scalar(UNFINISHED_KEY);
  key.commentBefore = UNFINISHED_COMMENT;
  top.items.push(new Pair<Scalar, Node>(key, value as Node));
}
