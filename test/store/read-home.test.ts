import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { type Answer, NOT_SURE } from '../../src/interview/answers';
import { parseHome, readHome } from '../../src/store/read-home';
import { homeText } from '../../src/store/write-home';
import { anyText } from '../any-text';

const top = 'lampkeeperHome: 1\nasOf: "2026-11-25"\nanswers:\n';

function faultsOf(text: string) {
  const read = parseHome(text, interview);
  if (read.ok) throw new Error('it was read without a fault');
  return read.faults;
}

describe('a sound home file', () => {
  test('is read with its day, numbers in the unit of the question', () => {
    const read = parseHome(
      `${top}  goal-hours: 3 days\n  heat-main: boiler\n  heat-watts: 115 V 3 A\n  hazards: [ice-snow]\n`,
      interview,
    );
    expect(read).toEqual({
      ok: true,
      asOf: '2026-11-25',
      answers: {
        'goal-hours': 72,
        'heat-main': 'boiler',
        'heat-watts': 345,
        hazards: ['ice-snow'],
      },
      unfinished: {},
    });
  });

  test('may say "not sure" anywhere, and may leave answers out', () => {
    const read = parseHome(
      `${top}  goal-hours: not sure\n  medical-devices: not sure\n`,
      interview,
    );
    expect(read.ok && read.answers).toEqual({
      'goal-hours': NOT_SURE,
      'medical-devices': NOT_SURE,
    });
  });

  test('may give twelve months as a list or in one line', () => {
    const months = [1290, 1140, 980, 720, 610, 640, 700, 690, 620, 700, 900, 1200];
    for (const written of [
      `[${months.join(', ')}]`,
      '"1,290 1,140 980 720 610 640 700 690 620 700 900 1,200 kWh"',
    ]) {
      const read = parseHome(`${top}  bill-year-kwh: ${written}\n`, interview);
      expect(read.ok && read.answers['bill-year-kwh']).toEqual(months);
    }
  });

  test('may hold keys of its owner, which are told with their place and are no fault', () => {
    const read = parseHome('lampkeeperHome: 1\nnotes: hello\nanswers: {}\n', interview);
    expect(read).toMatchObject({ ok: true, answers: {}, remarks: [{ line: 2, column: 1 }] });
    expect(read.ok && read.remarks![0]!.says).toMatch(/"notes" is not read/);
  });

  test('may have no answers at all', () => {
    expect(parseHome('lampkeeperHome: 1\nanswers:\n', interview).ok).toBe(true);
  });
});

describe('every fault says line, column and what to do', () => {
  const cases: [string, string, number, number, RegExp][] = [
    [
      'eleven months',
      `${top}  bill-year-kwh: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]\n`,
      4,
      18,
      /read 11 numbers and need 12/,
    ],
    [
      'a word among the months',
      `${top}  bill-year-kwh: 1 2 3 4 5 6 7 8 9 10 11 lots\n`,
      4,
      18,
      /"lots".*12 numbers/,
    ],
    [
      'an unknown question',
      `${top}  goal-hour: 24\n`,
      4,
      3,
      /no question is called "goal-hour".*Did you mean "goal-hours"/,
    ],
    [
      'an unknown choice',
      `${top}  heat-main: fusion\n`,
      4,
      14,
      /Write one of: .*gas-furnace.*not sure/,
    ],
    ['a number out of range', `${top}  goal-hours: 100000\n`, 4, 15, /must be between/],
    ['a number in another unit', `${top}  well-depth: 3 gal\n`, 4, 15, /Write it like: 12 ft/],
    ['no answer', `${top}  heat-main:\n`, 4, 13, /has no answer/],
    ['a list where one is asked', `${top}  heat-main: [boiler]\n`, 4, 14, /takes one answer/],
    [
      'a choice that stands alone',
      `${top}  hazards: [none, flood]\n`,
      4,
      12,
      /"none" stands alone/,
    ],
    ['an unknown tick', `${top}unfinished:\n  hazards: [fog]\n`, 5, 12, /"fog" is no choice/],
    ['begun by text', `${top}unfinished:\n  hazards: fog\n`, 5, 12, /should be a list/],
    ['begun in a choice', `${top}unfinished:\n  heat-main: x\n`, 5, 14, /Take this line out/],
    ['a bad ZIP', `${top}  home-zip: "12"\n`, 4, 13, /five digits/],
    ['a bad day', 'lampkeeperHome: 1\nasOf: "2026-02-30"\nanswers: {}\n', 2, 7, /a day such as/],
    ['another form', 'lampkeeperHome: 9\nanswers: {}\n', 1, 17, /form 9/],
    ['a key twice', `${top}  goal-hours: 24\n  goal-hours: 48\n`, 5, 3, /unique/i],
    ['a tab for indent', `${top}\tgoal-hours: 24\n`, 4, 1, /Mend this line/],
  ];
  test.each(cases)('%s', (_, text, line, column, says) => {
    const [first] = faultsOf(text);
    expect(first!.says).toMatch(says);
    expect([first!.line, first!.column]).toEqual([line, column]);
  });

  test('all faults are told at once', () => {
    expect(faultsOf(`${top}  goal-hours: lots\n  heat-main: fusion\n`)).toHaveLength(2);
  });
});

describe('a broken or hostile file never crashes', () => {
  const bomb = `a: &a [x,x,x,x,x,x,x,x,x]\n${['b', 'c', 'd', 'e', 'f', 'g', 'h'].map((k, i) => `${k}: &${k} [${Array(9).fill(`*${'abcdefg'[i]}`).join(',')}]`).join('\n')}\n`;
  const hostile: [string, string][] = [
    ['empty', ''],
    ['only a comment', '# nothing\n'],
    ['a list', '- a\n- b\n'],
    ['aliases that multiply', bomb],
    ['a prototype key', `${top}  __proto__: 1\n  constructor: 2\n`],
    ['a tag', `${top}  goal-hours: !!js/function "x"\n`],
    ['binary', '\u0000\u0001\ufffd'],
    ['deep nesting', `${top}  goal-hours: ${'['.repeat(3000)}`],
    ['an alias as an answer', `lampkeeperHome: 1\nx: &h 24\nanswers:\n  goal-hours: *h\n`],
    ['a map as an answer', `${top}  goal-hours: {a: 1}\n`],
    ['two documents', `${top}  goal-hours: 24\n---\nx: 1\n`],
    ['windows line ends and a bad line', `lampkeeperHome: 1\r\nanswers:\r\n  goal-hours 24\r\n`],
  ];
  test.each(hostile)('%s', (_, text) => {
    const faults = faultsOf(text);
    for (const { line, column, says } of faults) {
      expect(line).toBeGreaterThan(0);
      expect(column).toBeGreaterThan(0);
      expect(says.length).toBeGreaterThan(10);
    }
  });

  test('random text never throws', () => {
    fc.assert(
      fc.property(anyText(300), (text) => {
        parseHome(text, interview);
        parseHome(top + text, interview);
      }),
      { seed: 20261125, numRuns: 500 },
    );
  });

  test('a missing file, a folder and a huge file are said plainly', () => {
    const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-'));
    writeFileSync(join(folder, 'huge.home.yaml'), 'x'.repeat(1_100_000));
    const says = (path: string) => {
      const read = readHome(path, interview);
      return read.ok ? '' : read.faults[0]!.says;
    };
    expect(says(join(folder, 'none.home.yaml'))).toMatch(/no such file/);
    expect(says(folder)).toMatch(/a folder, not a file/);
    expect(says(join(folder, 'huge.home.yaml'))).toMatch(/far too large/);
    rmSync(folder, { recursive: true });
  });
});

describe('what is written is read back the same', () => {
  const answerOf = (q: (typeof interview.questions)[number]): fc.Arbitrary<Answer> => {
    const unsure = fc.constant<Answer>(NOT_SURE);
    if (q.kind === 'choice')
      return fc.oneof(unsure, fc.constantFrom<Answer>(...q.choices!.map((c) => c.id)));
    if (q.kind === 'choices') {
      const apart = q.choices!.filter((c) => !c.alone).map((c) => c.id);
      return fc.oneof(unsure, fc.subarray(apart, { minLength: 1 }) as fc.Arbitrary<Answer>);
    }
    if (q.kind === 'zip') return fc.constantFrom<Answer>('00501', '48911', '99950');
    if (q.kind === 'text')
      return fc.constantFrom<Answer>('No.', '- a: "b"', '#1 | 12 kW > no', '[x](y) *z*');
    if (q.kind === 'name') return fc.constantFrom<Answer>('kim', 'no', 'on', '1e3', 'null');
    const [low, high] = q.possible!;
    if (q.kind === 'numbers') {
      const of = { minLength: q.count!, maxLength: q.count! };
      return fc.oneof(unsure, fc.array(fc.integer({ min: low, max: high }), of));
    }
    const whole = q.decimals !== true;
    return fc.oneof(
      unsure,
      whole
        ? fc.integer({ min: Math.ceil(low), max: Math.floor(high) })
        : fc
            .integer({ min: Math.ceil(low * 100), max: Math.floor(high * 100) })
            .map((n) => n / 100),
    );
  };
  const all = fc.record(Object.fromEntries(interview.questions.map((q) => [q.id, answerOf(q)])), {
    requiredKeys: [],
  });

  test('with what was typed or ticked and not entered', () => {
    const typed = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 30 });
    const odd = fc.constantFrom('12', '1e3', 'no', '~', '- 3', 'a: b #c', '"', "'", '3 days', ' 7');
    const ticks = fc.subarray(['heat', 'well', 'lights']);
    fc.assert(
      fc.property(fc.oneof(typed, odd), ticks, (text, ids) => {
        const unfinished = { 'goal-hours': text, 'must-run': ids };
        const home = { answers: {}, asOf: '2026-11-25', unfinished };
        const read = parseHome(homeText(interview, home), interview);
        expect(read).toEqual({ ok: true, ...home });
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });

  test('for random answers to every question', () => {
    fc.assert(
      fc.property(all, (answers) => {
        const read = parseHome(
          homeText(interview, {
            answers: answers as Record<string, Answer>,
            asOf: '2026-11-25',
          }),
          interview,
        );
        expect(read).toEqual({ ok: true, asOf: '2026-11-25', answers, unfinished: {} });
      }),
      // The soak reads back what 200 homes keep (part disk).
      { seed: 20261125, numRuns: 40 },
    );
  });
});
