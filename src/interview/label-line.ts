import type { Answers } from './answers';
import { outside } from './check-answer';
import type { Question } from './questions/question';

/** Questions that stand together on one label: what it prints as RLA or FLA, and as LRA. */
const LABELS: readonly { readonly running: string; readonly starting: string }[] = [
  { running: 'cool-run-amps', starting: 'cool-start-amps' },
  { running: 'heat-pump-run-amps', starting: 'heat-pump-start-amps' },
  { running: 'well-run-amps', starting: 'well-start-amps' },
];

/** What a label line holds for a question and its neighbors on the same label. */
export interface LabelRead {
  readonly answers: Answers;
}

/** Amps behind a mark of a label: "RLA 14.1", "R.L.A: 14.1 A", "LRA73". */
function ampsBehind(text: string, marks: readonly string[]): number | null {
  for (const mark of marks) {
    const letters = [...mark].join('\\.?');
    const found = new RegExp(`\\b${letters}\\.?\\s*[:=]?\\s*(\\d+(?:\\.\\d+)?)`, 'i').exec(text);
    if (found !== null) return Number(found[1]);
  }
  return null;
}

/**
 * A whole line of a label typed or pasted into one of its fields: "RLA 14.1 LRA 73.0 208/230V 1PH". Null where it is no
 * such line, or where a figure in it cannot be an answer. MCA and the fuse are for wires, and are not taken.
 */
export function readLabel(
  questions: readonly Question[],
  at: string,
  text: string,
): LabelRead | null {
  const label = LABELS.find(({ running, starting }) => [running, starting].includes(at));
  if (label === undefined) return null;
  const found = [
    [label.running, ampsBehind(text, ['RLA', 'FLA'])],
    [label.starting, ampsBehind(text, ['LRA'])],
  ] as const;
  const answers: Record<string, number> = {};
  for (const [id, amps] of found) {
    const question = questions.find((one) => one.id === id);
    if (amps === null || question === undefined) continue;
    if (outside(question, amps) !== null) return null;
    answers[id] = amps;
  }
  return Object.keys(answers).length === 0 ? null : { answers };
}
