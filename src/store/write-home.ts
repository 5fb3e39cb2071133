import { Document, Scalar, stringify, YAMLMap } from 'yaml';
import type { Answer, Answers } from '../interview/answers';
import type { Interview } from '../interview/question';
import { exactQuantity } from '../quantity/exact-quantity';
import { HOME_KEY, HOME_VERSION, TARIFF_BLOCK } from './home-file';
import { saySystemError } from './say-system-error';
import { tariffNode } from './tariff-node';
import { writeFileWhole } from './write-file-whole';

/**
 * The text of a home file: answers in asking order, numbers with their units, each question named beside; before them
 * the household's own tariff where it has one.
 */
export function homeText(
  interview: Interview,
  answers: Answers,
  asOf: string,
  tariff: object | null = null,
): string {
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
    key.commentBefore = ` ${question.ask}`;
    map.add({ key, value: doc.createNode(writtenAs(answer, question.unit)) });
  }
  top.set('answers', map);
  return stringify(doc, { lineWidth: 0, flowCollectionPadding: false });
}

function writtenAs(answer: Answer, unit: string | undefined): unknown {
  if (typeof answer !== 'number') return Array.isArray(answer) ? [...answer] : answer;
  const exact = exactQuantity(answer, unit ?? 'count');
  return exact === String(answer) ? answer : exact;
}

function quoted(text: string): Scalar {
  const scalar = new Scalar(text);
  scalar.type = Scalar.QUOTE_DOUBLE;
  return scalar;
}

/** Keep the answers on disk, readable by the owner only. A sentence that says what to do when it failed, else null. */
export function saveHome(
  path: string,
  interview: Interview,
  answers: Answers,
  asOf: string,
  tariff: object | null = null,
): string | null {
  try {
    writeFileWhole(path, homeText(interview, answers, asOf, tariff));
    return null;
  } catch (error) {
    return saySystemError(error, 'write', path);
  }
}
