import { PassThrough } from 'node:stream';
import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { whatIfInOne } from '../../src/commands/talk/later';
import { afterPlan, canTry, understandAfter } from '../../src/faces/lines/after-plan';
import { readPlanByLine } from '../../src/faces/lines/read-plan';
import { answersOf } from '../households/read-household';

const answers = answersOf('mill-lane');

/** What is printed after these lines were typed over a plan, and how it ended. */
async function type(...lines: string[]) {
  const [stdin, stdout] = [new PassThrough(), new PassThrough()];
  let said = '';
  stdout.on('data', (chunk) => {
    said += String(chunk);
    // What is typed before the plan stands there is not meant for it.
    if (said.includes('or stop.') && !stdin.writableEnded)
      stdin.end(lines.map((line) => `${line}\n`).join(''));
  });
  const whatIf = whatIfInOne(null, '2026-11-25');
  const read = readPlanByLine({
    markdown: '# Backup power plan: oak\n\nA first page.\n\n## Cautions\n\nKeep it outdoors.\n',
    stdin: stdin as unknown as NodeJS.ReadStream,
    stdout: stdout as unknown as NodeJS.WriteStream,
    beside: afterPlan({ interview, answers, whatIf }),
  });
  const ask = await read;
  return { ask, said: said.replaceAll(/\s+/g, ' ') };
}

describe('a line after the plan', () => {
  test.each([
    ['stop', null],
    ['next', null],
    ['  Change ', { code: 'change' }],
    ['what if', { code: 'list' }],
    ['WHAT IF goal=48', { code: 'try', pairs: ['goal=48'] }],
    ['whatif goal 3 days', { code: 'try', pairs: ['goal=3 days'] }],
    ['what if goal=3 days, season=both', { code: 'try', pairs: ['goal=3 days', 'season=both'] }],
    ['what if must-run=fridge, heat', { code: 'try', pairs: ['must-run=fridge, heat'] }],
    ['what iffy', null],
    ['', null],
  ])('"%s" is understood', (line, meant) => {
    expect(understandAfter(line)).toEqual(meant);
  });

  test('what can be tried is said with the word to type and how it is now', () => {
    expect(canTry(interview, answers)).toContain('goal: Time to manage at home, now 24 h.');
  });

  test('what if says before and after, writes nothing, and keep asks the question', async () => {
    const { ask, said } = await type('what if goal=72', 'keep');
    expect(said).toContain('What if. Time to manage at home: 3 days. Now: 24 h.');
    expect(said).toMatch(/What if: About [^:]*You want 3 days\./);
    expect(said).toContain('Nothing is written.');
    expect(ask).toEqual({ ask: ['goal-hours'], tried: { 'goal-hours': '3 days' } });
  });

  test('what cannot be tried gets a sentence, and the plan is still there', async () => {
    const { ask, said } = await type(
      'what if gaol=48',
      'what if goal=abc',
      'keep',
      'dance',
      'stop',
    );
    expect(said).toContain('Error: Nothing here is called "gaol". Did you mean "goal"?');
    expect(said).toContain('We could not read "abc"');
    expect(said).toContain('Nothing is tried yet.');
    expect(said).toContain('Error: Type a number from 1 to 2');
    expect(ask).toBeNull();
  });

  test('the end of the input is a stop, and change leads to the list of answers', async () => {
    expect((await type()).ask).toBeNull();
    expect((await type('change')).ask).toEqual({ ask: [] });
  });
});
