import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { begin, show } from '../../src/interview/begin';
import { checkTyped } from '../../src/interview/check-answer';
import type { Key } from '../../src/interview/keys/key';
import { exampleFor } from '../../src/interview/questions/example-for';
import type { Question } from '../../src/interview/questions/question';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';
import { readingGrade } from './reading-grade';

const context: Context = { interview, short: false, nameProblem: () => null, spareName: () => 'a' };
const numbers = interview.questions.filter(({ kind }) => kind === 'number');

/** No number of any question, in any unit. */
const NO_NUMBER = [
  'lots',
  '-',
  '--',
  '?',
  '???',
  '\u{1F600}',
  '\u{1F44D}\u{1F3FD} ok',
  'n/a',
  '.',
  '1.2.3',
  'NaN',
  '0x10',
  'Infinity',
  '',
];
/** A number with something that is no unit. */
const STRANGE = ['30ish', '12 \u{1F4A1}', '30?', '1e3', '7 bananas in a row'];
/** More than one number. */
const SEVERAL = ['3-4', '115/230', '10 to 12', '3 or 4'];
/** Units that somebody types, each fit for one kind of question at most. */
const OTHER = [
  'about 3 tons',
  '1.5 kW',
  '30 m',
  '5 feet',
  '68 F',
  '20 °C',
  '100 gallons',
  '14 kWh',
  '15 amps',
  '30%',
  '$30',
];

const FORBIDDEN = /\b(invalid|valid|please|sorry|oops|required|illegal|error)\b/i;

function said(question: Question, typed: string): string | null {
  const read = checkTyped(question, typed);
  return read.ok ? null : read.message;
}

/** What is wrong with a sentence about a text that was refused. */
function faultsOf(question: Question, typed: string, message: string): string[] {
  const faults: [boolean, string][] = [
    [!message.includes(`"${question.says}"`), 'does not name the field'],
    [!/\b(Type|type|Check|press) /.test(message), 'does not say what to do'],
    [
      typed !== '' && !/between/.test(message) && !message.includes(typed),
      'does not say what was typed',
    ],
    [!/^["A-Z]/.test(message) || !message.endsWith('.'), 'is no sentence'],
    [FORBIDDEN.test(message), 'scolds'],
    [
      /undefined|null|NaN(?!")|\[object/.test(message.replaceAll(typed || '\u0000', '')),
      'holds code',
    ],
    [message.length > 240, 'is long'],
    [/\s{2}|\.\./.test(message.replaceAll(typed || '\u0000', '')), 'is badly set'],
  ];
  return faults.flatMap(([wrong, what]) =>
    wrong ? [`${question.id} ${typed}: ${what}: ${message}`] : [],
  );
}

describe('over every question that takes a number', () => {
  test('what is no number is refused, in a sentence that names the field and says what to do', () => {
    const wrong: string[] = [];
    for (const question of numbers) {
      for (const typed of [...NO_NUMBER, ...STRANGE, ...SEVERAL]) {
        const message = said(question, typed);
        // Things that are counted may be named: "30ish" and "7 bananas" are a count of something.
        const named = question.unit === 'count' && STRANGE.includes(typed);
        if (message === null) {
          if (!named) wrong.push(`${question.id} takes ${typed}`);
        } else wrong.push(...faultsOf(question, typed, message));
      }
    }
    expect(wrong).toEqual([]);
  });

  test('a unit of another kind is refused as one, and one of its own kind is turned or taken', () => {
    const wrong: string[] = [];
    for (const question of numbers) {
      for (const typed of OTHER) {
        const message = said(question, typed);
        if (message === null) continue;
        const known = /is in another unit|must be between|whole number/.test(message);
        if (!known) wrong.push(`${question.id} ${typed}: ${message}`);
        wrong.push(...faultsOf(question, typed, message));
      }
    }
    expect(wrong).toEqual([]);
  });

  test('the number given as an example is taken', () => {
    const wrong = numbers.filter((question) => {
      const read = checkTyped(question, exampleFor(question));
      return !read.ok;
    });
    expect(wrong.map(({ id }) => id)).toEqual([]);
  });

  test('the sentences are easy to read', () => {
    const texts = [...NO_NUMBER, ...STRANGE, ...SEVERAL].map((typed) => said(numbers[0]!, typed)!);
    expect(texts.filter((text) => readingGrade(text) > 8)).toEqual([]);
  });
});

/** The same amount as people write it: every spelling gives the same value. */
const SAME: readonly [unit: string, value: number, spellings: readonly string[]][] = [
  ['W', 1500, ['1,500', '1 500', '1500 W', '1.5 kW', '1.5kw', 'about 1500', '~1500 watts', '1.5k']],
  ['kW', 1.5, ['1.5', '1,500 W', '1.5 kW']],
  ['ft', 98.4251968504, ['30 m', '30 meters']],
  ['ft', 30, ['30', '30 ft', "30'", '30 feet', '10 yards']],
  ['ft2', 1800, ['1,800', '1800 sq ft', '1800 square feet']],
  ['F', 68, ['68', '68 F', '20 C', '20 °C', '68 degrees']],
  ['tons', 3, ['3', 'about 3 tons', '36,000 Btu', '36k btu/h']],
  ['h', 72, ['72', '3 days', '72 hours', '72 h']],
  ['min', 90, ['90', '1.5 h', '1 h 30 min', '1h30']],
  ['gal', 5, ['5', '5 gallons', 'five']],
  ['kWh', 900, ['900', '900 kWh', '0.9 MWh']],
  ['hp', 0.5, ['1/2', '½', '0.5 hp', '½ hp']],
  ['%', 30, ['30', '30%', '30 percent']],
];

test.each(SAME)('%s: %d is read from each way to write it', (unit, value, spellings) => {
  const question = { ...numbers.find((one) => one.unit === unit)!, possible: [-1e6, 1e6] as const };
  for (const typed of spellings) {
    const read = checkTyped(question, typed);
    expect(read.ok ? read.value : read.message, typed).toBeCloseTo(value, 6);
  }
});

describe('on the screen', () => {
  const press = (state: State, ...keys: readonly (Key | string)[]): State =>
    keys.reduce<State>((now, key) => {
      const one: Key = typeof key === 'string' ? { name: 'text', text: key } : key;
      return reduce(context, now, { type: 'key', key: one });
    }, state);
  const at = (id: string) => {
    const answers = { 'now-danger': ['none'], 'home-name': 'kim' };
    return show(context, { ...begin(context, {}), answers }, id);
  };

  test('the text stays, and the error goes once the reader moves on, types, asks for help or goes back', () => {
    for (const { id } of numbers) {
      const refused = press(at(id), 'lots', { name: 'enter' });
      expect(refused.error, id).toContain('"lots"');
      expect(refused.field.text).toBe('lots');
      expect(refused.at).toBe(id);
      const moves: Key[] = [
        { name: 'down' },
        { name: 'up' },
        { name: 'backspace' },
        { name: 'text', text: '5' },
        { name: 'text', text: '?' },
        { name: 'tab' },
      ];
      for (const key of moves) expect(press(refused, key).error, `${id} ${key.name}`).toBeNull();
    }
  });
});
