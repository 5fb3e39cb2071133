import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { changeCall } from '../../src/commands/change-call';
import { readArguments } from '../../src/commands/read-arguments';
import { begin } from '../../src/interview/begin';
import { relevant } from '../../src/interview/questions/relevant';
import { reduce } from '../../src/interview/reduce';
import type { Context } from '../../src/interview/state';

const answers = { 'home-name': 'kim', 'people-count': 3, 'people-risk': ['none'] };

describe.each([true, false])('to change an answer (short: %s)', (short) => {
  const [, ...words] = changeCall('lampkeeper', short, 'kim.home.yaml').split(' ');
  const args = readArguments(words);
  const context: Context = {
    interview,
    short,
    listFirst: true,
    nameProblem: () => null,
    spareName: () => 'my-home',
  };

  test('is a command that the program takes', () => {
    expect(args).toMatchObject({
      command: 'interview',
      rest: ['kim.home.yaml'],
      short,
      change: true,
    });
  });

  test('leads to the list of what was asked, past the question about danger', () => {
    const asked = reduce(context, begin(context, answers), { type: 'answer', answer: ['none'] });
    expect(asked).toMatchObject({ view: 'check', row: -1 });
    const count = relevant(context, asked.answers).length;
    if (short) expect(count).toBeLessThan(36);
    // A changed answer comes back to the list.
    const opened = reduce(context, asked, { type: 'open', question: 'people-count' });
    expect(reduce(context, opened, { type: 'answer', answer: 4 }).view).toBe('check');
  });

  test('a danger still comes first', () => {
    const told = reduce(context, begin(context, answers), {
      type: 'answer',
      answer: ['gas-smell'],
    });
    expect(told.view).toBe('act-now');
  });
});

test('without the option the next open question comes, as before', () => {
  const context: Context = {
    interview,
    short: false,
    nameProblem: () => null,
    spareName: () => 'my-home',
  };
  const asked = reduce(context, begin(context, answers), { type: 'answer', answer: ['none'] });
  expect(asked.view).toBe('ask');
});
