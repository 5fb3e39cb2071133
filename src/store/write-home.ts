import { Document, Scalar, stringify, YAMLMap } from 'yaml';
import type { Answers } from '../interview/answers';
import type { Interview } from '../interview/questions/question';
import type { Unfinished } from '../interview/unfinished';
import { answerNode, commentOf, quoted, UNFINISHED_COMMENT } from './answer-node';
import { HOME_KEY, HOME_VERSION, TARIFF_BLOCK, UNFINISHED_KEY } from './home-file';
import { tariffNode } from './tariff-node';

/** What a home file holds. */
export interface KeptHome {
  readonly answers: Answers;
  readonly asOf: string;
  /** What was typed or ticked and not entered. */
  readonly unfinished?: Unfinished;
  /** The household's own tariff, where it has one. */
  readonly tariff?: object | null;
}

/**
 * The text of a home file: answers in asking order, numbers with their units, each question named beside; before them
 * the household's own tariff where it has one.
 */
export function homeText(interview: Interview, home: KeptHome): string {
  const { answers, asOf, unfinished = {}, tariff = null } = home;
  const doc = new Document();
  const top = new YAMLMap();
  doc.contents = top as never;
  doc.commentBefore =
    ' A home as told to lampkeeper. "lampkeeper plan THIS-FILE" makes the plan again.';
  top.set(HOME_KEY, HOME_VERSION);
  top.set('asOf', quoted(asOf));
  if (tariff !== null) top.set(TARIFF_BLOCK, tariffNode(doc, tariff));
  const map = new YAMLMap();
  for (const question of interview.questions) {
    const answer = answers[question.id];
    if (answer === undefined) continue;
    const key = new Scalar(question.id);
    key.commentBefore = commentOf(question);
    map.add({ key, value: answerNode(doc, question, answer) });
  }
  top.set('answers', map);
  if (Object.keys(unfinished).length > 0) top.add(unfinishedPair(doc, unfinished));
  return stringify(doc, { lineWidth: 0, flowCollectionPadding: false });
}

function unfinishedPair(doc: Document, unfinished: Unfinished) {
  const key = new Scalar(UNFINISHED_KEY);
  key.commentBefore = UNFINISHED_COMMENT;
  return { key, value: doc.createNode(unfinished) } as never;
}
