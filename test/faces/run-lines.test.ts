import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import type { Later } from '../../src/faces/door';
import { runLines } from '../../src/faces/lines/run-lines';
import { begin } from '../../src/interview/begin';
import type { Interview, Question } from '../../src/interview/questions/question';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { draftSmall } from './draft-small';
import { smallInterview } from './small-interview';

const context: Context = {
  interview: smallInterview,
  short: false,
  nameProblem: (name) => (name === 'taken' ? 'That name is taken.' : null),
  spareName: () => 'home-1',
};

async function say(
  lines: readonly string[],
  save: Later['save'] = () => null,
  interview: Interview = smallInterview,
  start = begin({ ...context, interview }, {}),
) {
  const home = { ...context, interview };
  const stdin = new PassThrough();
  const stdout = new PassThrough();
  let printed = '';
  stdout.on('data', (chunk) => {
    printed += chunk;
  });
  stdin.end(`${lines.join('\n')}\n`);
  const state = await runLines({
    context: home,
    start,
    later: Promise.resolve({ save, draftOf: draftSmall }),
    color: false,
    stdin: stdin as unknown as NodeJS.ReadStream,
    stdout: stdout as unknown as NodeJS.WriteStream,
  });
  return { state, printed };
}

/** The same answers through the reducer's keys, as the screen gives them. */
function byKeys(keys: readonly string[]): State {
  const named: Record<string, 'enter' | 'tab' | 'escape' | 'down'> = {
    '\u001b[B': 'down',
    '\r': 'enter',
    '\t': 'tab',
    '\u001b': 'escape',
  };
  return keys.reduce(
    (state, key) => {
      const name = named[key];
      return reduce(context, state, {
        type: 'key',
        key: name === undefined ? { name: 'text', text: key } : { name },
      });
    },
    begin(context, {}),
  );
}

describe('line by line', () => {
  test('the same script gives the same answers as the screen', async () => {
    const { state } = await say([
      '3',
      'kim',
      '2',
      '240 V 5 A',
      '1, 2',
      'unsure',
      '2 days',
      'write',
    ]);
    const keys = [
      '3',
      ' ',
      '\r',
      'k',
      'i',
      'm',
      '\r',
      '2',
      '\r',
      ...'240 V 5 A',
      '\r',
      '1',
      ' ',
      '2',
      ' ',
      '\r',
      '\t',
      ...'2 days',
      '\r',
      '\u001b[B',
      '\r',
    ];
    const screen = byKeys(keys);
    expect(state.ending).toBe('plan');
    expect(screen.ending).toBe('plan');
    expect(state.answers).toEqual(screen.answers);
  });

  test('an error starts with "Error:" and the question stays', async () => {
    const { state, printed } = await say(['3', 'taken', 'kim', '9', 'x']);
    expect(printed).toContain('Error: That name is taken.');
    expect(printed).toMatch(/Error: There is no line "9"/);
    expect(state.at).toBe('water-source');
    expect(state.ending).toBe('saved');
  });

  test('a refused line is not kept, and leaves nothing unfinished', async () => {
    const { state } = await say(['3', 'kim', '2', '99 kW', 'back', '2', 'stop']);
    expect(state).toMatchObject({ at: 'well-watts', unfinished: {}, field: { text: '' } });
  });

  test('what was begun on the screen is said, and is no answer', async () => {
    const answers = { 'home-name': 'kim', 'water-source': 'well' };
    const start = begin(context, answers, { 'well-watts': '15' });
    const { state, printed } = await say(['3', 'stop'], undefined, smallInterview, start);
    expect(printed).toContain('Noted: You began this before and did not enter it: 15.');
    expect(state.answers['well-watts']).toBeUndefined();
    expect(state.unfinished).toEqual({ 'well-watts': '15' });
  });

  test('an unusual number is asked back once', async () => {
    const { state, printed } = await say(['3', 'kim', '2', '5 kW', '1']);
    expect(printed).toMatch(/more or less than most homes/);
    expect(state.answers['well-watts']).toBe(5000);
  });

  test('danger prints what to do now, and stopping is the first line', async () => {
    const { state, printed } = await say(['1', '1']);
    expect(printed).toMatch(/Leave the house now/);
    expect(state.ending).toBe('danger');
  });

  test('help, back, list and sums answer without moving on', async () => {
    const { state, printed } = await say([
      '3',
      'kim',
      'help',
      'list',
      'sums',
      'back',
      'kim',
      '2',
      '1500',
      'sums',
      'stop',
    ]);
    expect(printed).toMatch(/Why we ask: /);
    expect(printed).toMatch(/If you are not sure: /);
    expect(printed).toMatch(/2\. Name of the home: kim/);
    expect(printed).toMatch(/Running power: 1,500 W/);
    expect(state.ending).toBe('saved');
    expect(state.answers['well-watts']).toBe(1500);
  });

  test('an answer can be changed from the list', async () => {
    const { state } = await say(['3', 'kim', '1', '1', '48911', '24', '5', '48912', 'write']);
    expect(state.answers['home-zip']).toBe('48912');
    expect(state.ending).toBe('plan');
  });

  test('each answer is kept before the next question, and a full disk is said', async () => {
    const kept: string[] = [];
    const { printed } = await say(['3', 'kim', '1'], (answers) => {
      kept.push(Object.keys(answers).at(-1)!);
      return kept.length === 2 ? 'The disk is full.' : null;
    });
    expect(kept).toEqual(['now-danger', 'home-name', 'water-source']);
    expect(printed).toContain('Error: The disk is full.');
  });

  test('somebody else changed the home: their answers are taken in, what both answered is asked again', async () => {
    let times = 0;
    const { state, printed } = await say(['3', 'kim', '2', '1500', '1', 'stop'], (answers) => {
      times += 1;
      if (times !== 4) return null;
      const { 'water-source': _, ...others } = answers;
      return { answers: others, ask: ['water-source'], says: 'Which is right?' };
    });
    expect(printed).toContain('Noted: Which is right?');
    expect(state.answers).toMatchObject({ 'home-name': 'kim', 'water-source': 'town' });
  });

  test('why nothing can be kept is said before the first question', async () => {
    const start = { ...begin(context, {}), unsaved: 'Nothing can be kept here.' };
    const { printed } = await say(['3', 'stop'], undefined, smallInterview, start);
    expect(printed).toMatch(/^Error: Nothing can be kept here\.\n/);
  });

  test('a file cannot make the terminal obey', async () => {
    const start = { ...begin(context, {}), unsaved: 'at \u001b[2J\u202e.home.yaml' };
    const { printed } = await say(['stop'], undefined, smallInterview, start);
    expect(printed).toContain('at <U+001B>[2J<U+202E>.home.yaml');
  });

  test('the end of the input keeps the answers; nothing is colored', async () => {
    const { state, printed } = await say(['3']);
    expect(state.ending).toBe('saved');
    expect(printed).not.toContain('\u001b');
  });
});

describe('several numbers', () => {
  const months: Question = {
    ...smallInterview.questions.find((q) => q.kind === 'number')!,
    id: 'months',
    ask: 'How much in each of three months?',
    says: 'Use by month',
    kind: 'numbers',
    count: 3,
    unit: 'kWh',
    volts: undefined,
    possible: [0, 1000],
    usual: undefined,
    unsure: { assume: null, because: 'We assume nothing' },
    when: undefined,
  };
  const only: Interview = {
    ...smallInterview,
    questions: [...smallInterview.questions.slice(0, 2), months],
  };

  test('are typed in one line; a wrong line is said again so that it can be mended', async () => {
    const { state, printed } = await say(['3', 'kim', '10 20', '10, 20, 30'], () => null, only);
    expect(printed).toContain('Type 3 numbers, in kilowatt-hours (kWh), with spaces or commas');
    expect(printed).toContain('Error: For "Use by month" we read 2 numbers and need 3.');
    expect(printed).toContain('You typed: 10 20');
    expect(state.answers.months).toEqual([10, 20, 30]);
  });
});

test('a line of a megabyte is refused at once, and the next one is taken', async () => {
  const started = Date.now();
  const { state, printed } = await say(['3', 'a'.repeat(1_000_000), 'oak']);
  expect(printed).toContain('This line is far too long to be an answer.');
  expect(state.answers['home-name']).toBe('oak');
  // Taken letter by letter it was over a minute.
  expect(Date.now() - started).toBeLessThan(10_000);
});
