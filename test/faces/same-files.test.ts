import { PassThrough } from 'node:stream';
import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { runLines } from '../../src/faces/lines/run-lines';
import { type Answer, type Answers, choicesIn, NOT_SURE } from '../../src/interview/answers';
import { begin, typedFor } from '../../src/interview/begin';
import type { Key } from '../../src/interview/keys/key';
import { offered, questionAt } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { homeText } from '../../src/store/write-home';
import { randomHome } from '../random-home';
import { draftSmall } from './draft-small';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};

/** The same step as a line and as keys. */
interface Step {
  readonly line: string;
  readonly keys: readonly Key[];
}
const named = (...names: Exclude<Key['name'], 'text'>[]): Key[] => names.map((name) => ({ name }));
const letters = (text: string): Key[] => [...text].map((text) => ({ name: 'text', text }));

function stepFor(state: State, told: Answers): Step {
  switch (state.view) {
    case 'ask':
      return answerStep(state, state.at === 'now-danger' ? ['none'] : told[state.at]);
    case 'check':
      return { line: 'write', keys: named('down', 'enter') };
    case 'read-back':
      return { line: '1', keys: named('down', 'enter') };
    default:
      // The first line: yes, that number is right; go on; go on with the questions.
      return { line: '1', keys: named('down', 'enter') };
  }
}

function answerStep(state: State, answer: Answer | undefined): Step {
  const question = questionAt(context, state.at);
  const numbers = offered(context, state, question).map(({ id }) => id);
  const ids = (choicesIn(answer) ?? [String(answer)]).filter((id) => numbers.includes(id));
  const unsure = answer === undefined || answer === NOT_SURE;
  if (question.kind === 'name')
    return { line: 'oak', keys: [...letters('oak'), ...named('enter')] };
  if (unsure || (question.choices !== undefined && ids.length === 0)) {
    return { line: 'unsure', keys: named('tab') };
  }
  if (question.choices === undefined) {
    const text = typedFor(question, answer);
    return { line: text, keys: [...letters(text), ...named('enter')] };
  }
  const at = ids.map((id) => String(numbers.indexOf(id) + 1));
  if (question.kind === 'choice') {
    return { line: at[0]!, keys: [...letters(at[0]!), ...named('enter')] };
  }
  const ticks = at.flatMap((number) => letters(`${number} `));
  return { line: at.join(', '), keys: [...ticks, ...named('enter')] };
}

/** A whole sitting by keys, with the lines that say the same. */
function byKeys(told: Answers): { state: State; lines: string[] } {
  let state = begin(context, {});
  const lines: string[] = [];
  while (state.ending === null && lines.length < 300) {
    const step = stepFor(state, told);
    lines.push(step.line);
    for (const key of step.keys) state = reduce(context, state, { type: 'key', key });
  }
  return { state, lines };
}

async function byLines(lines: readonly string[]): Promise<State> {
  const [stdin, stdout] = [new PassThrough(), new PassThrough()];
  stdout.resume();
  stdin.end(`${lines.join('\n')}\n`);
  return runLines({
    context,
    start: begin(context, {}),
    later: Promise.resolve({ save: () => null, draftOf: draftSmall }),
    color: false,
    stdin: stdin as unknown as NodeJS.ReadStream,
    stdout: stdout as unknown as NodeJS.WriteStream,
  });
}

test('screen and lines give the same home file, to the byte, from the same 20 scripts', async () => {
  for (let seed = 1; seed <= 20; seed++) {
    const { state, lines } = byKeys(randomHome(seed));
    const spoken = await byLines(lines);
    const file = ({ answers, unfinished }: State) =>
      homeText(interview, { asOf: '2026-11-28', answers, unfinished, tariff: null });
    expect({ seed, ending: state.ending }).toEqual({ seed, ending: 'plan' });
    expect(spoken.ending).toBe('plan');
    expect(file(spoken)).toBe(file(state));
    expect(Object.keys(state.answers).length).toBeGreaterThan(30);
  }
});
