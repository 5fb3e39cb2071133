import { rmSync } from 'node:fs';
import { Document, Scalar, stringify, YAMLMap } from 'yaml';
import { type Answer, type Answers, numbersIn } from '../interview/answers';
import type { Interview } from '../interview/question';
import type { Unfinished } from '../interview/unfinished';
import { exactQuantity } from '../quantity/exact-quantity';
import { HOME_KEY, HOME_VERSION, TARIFF_BLOCK, UNFINISHED_KEY } from './home-file';
import { saySystemError } from './say-system-error';
import { tariffNode } from './tariff-node';
import { writeFileWhole } from './write-file-whole';

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
    key.commentBefore = ` ${question.ask}`;
    // Numbers stand in one line, as they were typed.
    const flow = numbersIn(answer) !== null;
    map.add({ key, value: doc.createNode(writtenAs(answer, question.unit), { flow }) });
  }
  top.set('answers', map);
  if (Object.keys(unfinished).length > 0) top.add(unfinishedPair(doc, unfinished));
  return stringify(doc, { lineWidth: 0, flowCollectionPadding: false });
}

function unfinishedPair(doc: Document, unfinished: Unfinished) {
  const key = new Scalar(UNFINISHED_KEY);
  key.commentBefore =
    ' Typed or ticked and not entered yet. No answers: the plan does not count them.';
  return { key, value: doc.createNode(unfinished) } as never;
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

/** Take a home file of this sitting away. A sentence that says what to do when that failed, else null. */
export function removeHome(path: string): string | null {
  try {
    rmSync(path, { force: true });
    return null;
  } catch (error) {
    return saySystemError(error, 'remove', path);
  }
}

/** Keep the answers on disk, readable by the owner only. A sentence that says what to do when it failed, else null. */
export function saveHome(path: string, interview: Interview, home: KeptHome): string | null {
  try {
    writeFileWhole(path, homeText(interview, home));
    return null;
  } catch (error) {
    return saySystemError(error, 'write', path);
  }
}
