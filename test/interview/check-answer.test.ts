import { describe, expect, it } from 'vitest';
import interview from '#compiled/questions.js';
import { checkTyped, outside } from '../../src/interview/check-answer';
import type { Question } from '../../src/interview/questions/question';
import { smallInterview } from '../faces/small-interview';

function question(id: string): Question {
  return smallInterview.questions.find((q) => q.id === id)!;
}

const watts = question('well-watts');
const people: Question = {
  ...watts,
  says: 'People',
  unit: 'people',
  volts: undefined,
  possible: [1, 20],
  usual: [1, 8],
};

function refusal(asked: Question, typed: string): string {
  const checked = checkTyped(asked, typed);
  expect(checked.ok).toBe(false);
  return checked.ok ? '' : checked.message;
}

describe('checking a typed number', () => {
  it('takes it in the unit asked for, with commas and spaces', () => {
    expect(checkTyped(watts, ' 1,500 ')).toMatchObject({ ok: true, value: 1500, unusual: false });
  });

  it('turns another unit of the same kind, and amps at the known volts, and says what it read', () => {
    const kilowatts = checkTyped(watts, '1.5 kW');
    expect(kilowatts).toMatchObject({ ok: true, value: 1.5 * 1000 });
    const amps = checkTyped(watts, '8 A');
    expect(amps).toMatchObject({ ok: true, value: 240 * 8 });
    for (const read of [kilowatts, amps]) expect(read.ok && read.note).toBeTruthy();
  });

  it('refuses what is outside the possible range, naming the range; its ends are possible', () => {
    expect(refusal(watts, '99')).toContain('between 100 and 8,000 W');
    expect(refusal(watts, '8001')).toContain('between 100 and 8,000 W');
    expect(checkTyped(watts, '100').ok).toBe(true);
    expect(checkTyped(watts, '8000').ok).toBe(true);
  });

  it('marks as unusual what is possible but outside the usual range; its ends are usual', () => {
    const unusual = (typed: string) => {
      const checked = checkTyped(watts, typed);
      return checked.ok && checked.unusual;
    };
    expect([unusual('399'), unusual('3001')]).toEqual([true, true]);
    expect([unusual('400'), unusual('3000')]).toEqual([false, false]);
  });

  it('has a sentence each for nothing, no number and another kind of unit', () => {
    const said = ['', 'plenty', '12 hours'].map((typed) => refusal(watts, typed));
    expect(new Set(said).size).toBe(3);
    for (const sentence of said) expect(sentence).toContain('watts');
  });

  it('takes no half people, unless the question allows decimals', () => {
    expect(refusal(people, '2.5')).toContain('whole number');
    expect(outside({ ...people, decimals: true }, 2.5)).toBeNull();
    expect(checkTyped(people, '3')).toMatchObject({ ok: true, value: 3 });
  });
});

describe('checking a ZIP code', () => {
  const zip = question('home-zip');

  it('takes five digits, keeps a leading zero and drops the four after a dash', () => {
    expect(checkTyped(zip, '01001')).toMatchObject({ ok: true, value: '01001' });
    expect(checkTyped(zip, '044')).toMatchObject({ ok: true, value: '044' });
    expect(checkTyped(zip, '48911-1234')).toMatchObject({ ok: true, value: '48911' });
  });

  it.each(['', '4891', '489112', '4891a', '48911-12'])(
    'refuses %j and says five digits',
    (typed) => {
      expect(refusal(zip, typed)).toMatch(/five/);
    },
  );
});

describe('checking a name for the files', () => {
  const name = question('home-name');

  it('turns capitals and spaces into a plain file name', () => {
    expect(checkTyped(name, ' Oak House ')).toMatchObject({ ok: true, value: 'oak-house' });
  });

  it.each(['../up', '/etc', '.hidden', '-dash', 'a/b', 'oak\u0000', 'x'.repeat(25), 'haus*'])(
    'refuses %j, which could name another file',
    (typed) => {
      expect(refusal(name, typed)).toContain('letters, digits and dashes');
    },
  );

  it('takes at most 24 letters', () => {
    expect(checkTyped(name, 'x'.repeat(24)).ok).toBe(true);
  });
});

it('a count is asked for as a number, without the word twice', () => {
  for (const question of interview.questions.filter((q) => q.kind === 'number')) {
    for (const typed of ['', 'x', '3 kW 5']) {
      const read = checkTyped(question, typed);
      expect(read.ok ? '' : read.message, question.id).not.toMatch(
        /number (in|of) (a number|a year|times)|number of people for/,
      );
    }
  }
});

describe('a text', () => {
  const question = interview.questions.find(({ id }) => id === 'association-words')!;
  const typed = (text: string) => checkTyped(question, text);

  it('is kept as typed, on one line, with what nobody can see made visible', () => {
    expect(typed('  No generator:\n quiet 10 pm to 7 am, 12 kW  ')).toMatchObject({
      value: 'No generator: quiet 10 pm to 7 am, 12 kW',
      unusual: false,
    });
    expect(typed('no\u202e noise\u001b[31m')).toMatchObject({
      value: 'no<U+202E> noise<U+001B>[31m',
    });
  });

  it('is refused empty, and where it is longer than its paper holds', () => {
    expect(typed('   ')).toMatchObject({ ok: false });
    expect(typed('x'.repeat(240)).ok).toBe(true);
    const long = typed('x'.repeat(241));
    expect(long.ok === false && long.message).toMatch(/241 letters, and at most 240 fit/);
  });
});
