import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Answers, NOT_SURE } from '../../src/interview/answers';
import { begin } from '../../src/interview/begin';
import { checkTyped } from '../../src/interview/check-answer';
import type { Event } from '../../src/interview/event';
import type { Key } from '../../src/interview/keys/key';
import { NO_ROW } from '../../src/interview/keys/no-row';
import type { Question } from '../../src/interview/questions/question';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { smallInterview } from '../faces/small-interview';

const context: Context = {
  interview: smallInterview,
  short: false,
  nameProblem: (name) => (name === 'taken' ? 'That name is taken.' : null),
  spareName: () => 'home-1',
};

const press = (...names: Exclude<Key['name'], 'text'>[]): Event[] =>
  names.map((name) => ({ type: 'key', key: { name } }));
const type = (text: string, pasted = false): Event[] => [
  { type: 'key', key: { name: 'text', text, ...(pasted ? { pasted } : {}) } },
];
const answer = (value: string | number | string[]): Event => ({ type: 'answer', answer: value });

function run(events: readonly Event[], from: State = begin(context, {})): State {
  return events.reduce((state, event) => reduce(context, state, event), from);
}

function numberOf(unit: string): Question {
  return { ...smallInterview.questions.find((q) => q.kind === 'number')!, unit };
}

function actsOf(state: State): string[] {
  return rowsOf(context, state).flatMap((row) => (row.kind === 'act' ? [row.act] : []));
}

const safe = answer(['none']);
const toWater = [safe, answer('kim')];

describe('the first question', () => {
  test('is whether anything is wrong right now, even for a home begun before', () => {
    const state = begin(context, {
      'now-danger': ['none'],
      'home-name': 'kim',
      'water-source': 'well',
    });
    expect(state.at).toBe('now-danger');
    expect(state.answers['now-danger']).toBeUndefined();
    expect(run([safe], state).at).toBe('well-watts');
  });

  test('a danger shows what to do now; stopping and going on are each a choice of their own', () => {
    const state = run([answer(['gas'])]);
    expect(state.view).toBe('act-now');
    // While somebody must leave, no line goes on: the last one asks again what is dangerous.
    expect(actsOf(state)).toEqual(['read', 'stop-now', 'back']);
    const read = run(press('enter', 'enter', 'enter'), state);
    expect(read).toMatchObject({ view: 'act-now', ending: null });
    expect(read.notice).toMatch(/Go down to the line you choose/);
    expect(run(press('down', 'enter'), state).ending).toBe('danger');
    expect(run(press('down', 'down', 'enter'), state)).toMatchObject({
      view: 'ask',
      at: 'now-danger',
    });
  });

  test('a danger that can wait shows going on first, and no line does it unmoved', () => {
    const state = run([answer(['wet'])]);
    expect(actsOf(state)).toEqual(['read', 'go-on', 'stop-now']);
    expect(run(press('enter', 'enter'), state).view).toBe('act-now');
    expect(run(press('down', 'enter'), state).at).toBe('home-name');
  });

  test('not sure is treated as a danger, not as none', () => {
    const state = run(press('tab'));
    expect(state.view).toBe('act-now');
    expect(actsOf(state)).toEqual(['read', 'stop-now', 'go-on']);
    expect(run(press('enter', 'enter'), state)).toMatchObject({ view: 'act-now', ending: null });
  });
});

describe('going back', () => {
  test('shows the question as it was left, filled in', () => {
    const state = run([...toWater, answer('well'), ...type('1500'), ...press('enter', 'escape')]);
    expect(state.at).toBe('well-watts');
    expect(state.field.text).toBe('1500 W');
    expect(run(press('escape'), state)).toMatchObject({ at: 'water-source', row: 1 });
  });

  test('and on again passes each question that was answered', () => {
    const there = run([...toWater, answer('well'), answer(1500), answer(['sump'])]);
    expect(there.at).toBe('home-zip');
    const back = run(press('escape', 'escape', 'escape'), there);
    expect(back.at).toBe('water-source');
    const again = run([answer('well'), answer(1500), answer(['sump'])], back);
    expect(again.at).toBe('home-zip');
    expect(again.answers).toEqual(there.answers);
  });

  test('keeps answers that no longer apply, and takes them up when they do again', () => {
    const town = run([
      ...toWater,
      answer('well'),
      answer(1500),
      ...press('escape', 'escape'),
      answer('town'),
    ]);
    expect(town.at).toBe('waste');
    expect(town.answers['well-watts']).toBe(1500);
    const well = run([...press('escape'), answer('well')], town);
    expect(well.answers['well-watts']).toBe(1500);
    expect(['waste', 'well-watts']).toContain(well.at);
  });

  test('from the first question says that there is nothing before it', () => {
    expect(run(press('escape')).error).toMatch(/first question/);
  });
});

describe('a typed answer', () => {
  const atWatts = run([...toWater, answer('well')]);

  test('that cannot be is refused with a sentence, and stays in the field', () => {
    const state = run([...type('99 kW'), ...press('enter')], atWatts);
    expect(state.error).toMatch(/must be between/);
    expect(state.field.text).toBe('99 kW');
    expect(state.answers['well-watts']).toBeUndefined();
  });

  test('that is unusual is asked back once', () => {
    const state = run([...type('5 kW'), ...press('enter')], atWatts);
    expect(state).toMatchObject({ view: 'unusual', unusual: { value: 5000 } });
    expect(run(press('enter', 'enter'), state)).toMatchObject({
      view: 'unusual',
      answers: state.answers,
    });
    expect(run(press('down', 'enter'), state).answers['well-watts']).toBe(5000);
    const again = run(press('down', 'down', 'enter'), state);
    expect(again).toMatchObject({ view: 'ask', at: 'well-watts' });
    expect(again.field.text).toBe('5 kW');
  });

  test('in other words says what was understood', () => {
    const state = run([...type('240 V 5 A'), ...press('enter')], atWatts);
    expect(state.answers['well-watts']).toBe(1200);
    expect(state.notice).toMatch(/1,200 W/);
  });

  test('takes a paste as text and never as Enter', () => {
    const state = run(type('1200\n', true), atWatts);
    expect(state.at).toBe('well-watts');
    expect(state.field.text.trim()).toBe('1200');
  });

  test('a taken name is refused, a free one goes on', () => {
    const state = run([safe, ...type('taken'), ...press('enter')]);
    expect(state.error).toBe('That name is taken.');
    expect(
      run([...press('ctrl-u'), ...type('Oak House'), ...press('enter')], state).answers[
        'home-name'
      ],
    ).toBe('oak-house');
  });

  test('"not sure" about the name takes a free one, and says which', () => {
    const state = run([safe, ...press('tab')]);
    expect(state.answers['home-name']).toBe('home-1');
    expect(state.notice).toBe('Name of the home: we take "home-1".');
  });

  test('? is help, also behind a text, which stays', () => {
    expect(run(type('?'), atWatts).view).toBe('help');
    const help = run([...type('9'), ...type('?')], atWatts);
    expect(help).toMatchObject({ view: 'help', field: { text: '9' } });
    expect(run(press('escape'), help)).toMatchObject({ view: 'ask', field: { text: '9' } });
  });

  test('out of range speaks of a label only where the answer is read off one', () => {
    const people: Question = { ...numberOf('people'), possible: [1, 20] };
    const said = (question: Question) => {
      const read = checkTyped(question, '900');
      return read.ok ? '' : read.message;
    };
    expect(said(people)).toMatch(/between 1 and 20 people\. Type a number in that range/);
    expect(said(people)).not.toMatch(/label|unit/);
    expect(said({ ...people, nameplate: true })).toMatch(/the unit on the label/);
  });
});

describe('a list', () => {
  const atWaste = run([...toWater, answer('well'), answer(1500)]);

  test('offers only what this home can have', () => {
    const labels = (state: State) =>
      rowsOf(context, state).filter((r) => r.kind === 'choice').length;
    expect(labels(atWaste)).toBe(3);
    expect(labels(run([...toWater, answer('town')]))).toBe(2);
  });

  test('ticks with Space, a digit moves, Enter goes on', () => {
    const state = run(
      [...type('2'), ...type(' '), ...type('1'), ...type(' '), ...press('enter')],
      atWaste,
    );
    expect(state.answers.waste).toEqual(['sump', 'septic']);
  });

  test('a choice that stands alone clears the others and is cleared by them', () => {
    const alone = run([...type('1'), ...type(' '), ...type('3'), ...type(' ')], atWaste);
    expect(alone.ticked).toEqual(['none']);
    expect(run([...type('1'), ...type(' ')], alone).ticked).toEqual(['sump']);
  });

  test('Enter with nothing ticked says what to do', () => {
    expect(run(press('enter'), atWaste).error).toMatch(/Go to a line .* press Space to tick it/);
    expect(run(press('down', 'enter'), atWaste).error).toMatch(/tick a line \(now line 1\)/);
  });

  test('Enter behind a digit says that its line is not ticked, and goes on the second time', () => {
    const state = run([...type('1'), ...type(' '), ...type('2'), ...press('enter')], atWaste);
    expect(state).toMatchObject({ at: 'waste', ticked: ['sump'] });
    expect(state.error).toMatch(/Line 2 is not ticked\. Press Space to tick it/);
    expect(run(press('enter'), state).answers.waste).toEqual(['sump']);
    expect(run([...type(' '), ...press('enter')], state).answers.waste).toEqual(['sump', 'septic']);
  });

  test('letters and pastes do nothing', () => {
    expect(run([...type('x'), ...type('12 3', true)], atWaste)).toMatchObject({
      ticked: [],
      row: NO_ROW,
    });
  });
});

describe('the list of answers', () => {
  const all = [...toWater, answer('town'), answer(['sump']), answer('48911'), answer(24)];

  test('comes after the last question, and writes the plan', () => {
    const state = run(all);
    expect(state.view).toBe('check');
    expect(run(press('enter', 'enter'), state)).toMatchObject({ view: 'check', ending: null });
    expect(run(press('down', 'enter'), state).ending).toBe('plan');
  });

  test('opens a question, asks what the change brings up, and comes back', () => {
    const opened = run([{ type: 'open', question: 'water-source' }], run(all));
    expect(opened).toMatchObject({ view: 'ask', at: 'water-source', fromCheck: true });
    const next = run([answer('well')], opened);
    expect(next.at).toBe('well-watts');
    const back = run([answer(1500)], next);
    expect(back.view).toBe('check');
    expect(rowsOf(context, back)[back.row]).toMatchObject({ id: 'well-watts' });
  });

  test('takes a changed answer without going through what is still open', () => {
    const list = run([...toWater, answer('town'), { type: 'act', act: 'draft' }]);
    const changed = run([{ type: 'open', question: 'water-source' }, answer('well')], list);
    expect(changed.at).toBe('well-watts');
    expect(run([answer(900)], changed).view).toBe('check');
  });

  test('goes on from an open question chosen there, and Esc leads back to the list', () => {
    const list = run([...toWater, answer('town'), { type: 'act', act: 'draft' }]);
    const zip = run([{ type: 'open', question: 'home-zip' }], list);
    expect(run(press('escape'), zip).view).toBe('check');
    expect(run([answer('48911')], zip).at).toBe('goal-hours');
    expect(run([answer('48911'), answer(24)], zip).at).toBe('waste');
  });

  test('Left and Right go from section to section', () => {
    const list = run(all);
    const idAt = (state: State) => {
      const row = rowsOf(context, state)[state.row]!;
      return row.kind === 'answer' ? row.id : row.kind;
    };
    const stops = [1, 2, 3, 4].map((n) => idAt(run(press(...Array(n).fill('right')), list)));
    expect(stops).toEqual(['now-danger', 'water-source', 'home-zip', 'act']);
    expect(idAt(run(press('right', 'right', 'right', 'left'), list))).toBe('water-source');
  });

  test('Esc from a question opened there comes back unchanged', () => {
    const before = run(all);
    const back = run([{ type: 'open', question: 'home-zip' }, ...press('escape')], before);
    expect(back.view).toBe('check');
    expect(back.answers).toEqual(before.answers);
  });

  test('can be opened before the end, for a draft', () => {
    expect(run([...toWater, { type: 'act', act: 'draft' }]).view).toBe('check');
  });
});

describe('stopping', () => {
  test('Ctrl+C at any moment ends at once and loses no answer', () => {
    const state = run([...toWater, answer('well'), ...type('12'), ...press('ctrl-c')]);
    expect(state.ending).toBe('interrupted');
    expect(state.answers['water-source']).toBe('well');
  });

  test('Ctrl+S saves and stops; nothing moves after the end', () => {
    const state = run([...toWater, ...press('ctrl-s')]);
    expect(state.ending).toBe('saved');
    expect(run([answer('town')], state)).toBe(state);
  });
});

test('"not sure" is no fault: it says what is taken until somebody knows, and moves on', () => {
  const state = run([...toWater, ...press('tab')]);
  expect(state.answers['water-source']).toBe(NOT_SURE);
  expect(state.at).not.toBe('water-source');
  expect(state.notice).toBe('Water source: until you know, we take "A well with a pump".');
});

test('a question mark over the page for tonight says what it is for, and leads back to it', () => {
  const page: State = { ...begin(context, {}), view: 'tonight', row: -1 };
  const mark: Event = { type: 'key', key: { name: 'text', text: '?' } };
  const help = reduce(context, page, mark);
  expect(help.view).toBe('tonight-help');
  for (const key of press('enter', 'escape'))
    expect(reduce(context, help, key)).toMatchObject({ view: 'tonight', row: -1 });
});

describe('the short consult', () => {
  test('asks only its questions, and an unasked one stays open', () => {
    const short = { ...context, short: true };
    const state = [safe, answer('kim'), answer(24)].reduce(
      (s, e) => reduce(short, s, e),
      begin(short, {}),
    );
    expect(state.view).toBe('check');
    expect(Object.keys(state.answers).sort()).toEqual(['home-name', 'now-danger']);
  });
});

describe('whatever is pressed', () => {
  const names = [
    'enter',
    'escape',
    'tab',
    'backspace',
    'up',
    'down',
    'left',
    'right',
    'home',
    'end',
    'page-up',
    'page-down',
    'ctrl-s',
    'ctrl-u',
  ] as const;
  const key: fc.Arbitrary<Event> = fc.oneof(
    fc.constantFrom(...names).map((name): Event => ({ type: 'key', key: { name } })),
    fc
      .string({ minLength: 1, maxLength: 3, unit: 'grapheme' })
      .map((text): Event => ({ type: 'key', key: { name: 'text', text } })),
    fc
      .constantFrom(' ', '1', '2', '?', '1500')
      .map((text): Event => ({ type: 'key', key: { name: 'text', text } })),
  );

  test('nothing throws, no row beyond the last is marked, and no answer is lost', () => {
    fc.assert(
      fc.property(fc.array(key, { maxLength: 120 }), (events) => {
        let state = begin(context, {});
        let kept: Answers = state.answers;
        for (const event of events) {
          state = reduce(context, state, event);
          for (const id of Object.keys(kept)) expect(state.answers).toHaveProperty(id);
          kept = state.answers;
          const rows = rowsOf(context, state);
          if (state.view !== 'help') expect(state.row).toBeLessThan(rows.length);
          expect(state.row).toBeGreaterThanOrEqual(NO_ROW);
          expect(state.field.cursor).toBeLessThanOrEqual(state.field.text.length);
        }
      }),
      { seed: 20261125, numRuns: 400 },
    );
  });

  test('tab all the way leads to the list, every answer "not sure"', () => {
    let state = run([safe, answer('kim')]);
    for (let i = 0; i < 10 && state.view === 'ask'; i++) state = run(press('tab'), state);
    expect(state.view).toBe('check');
    expect(state.answers['home-zip']).toBe(NOT_SURE);
  });
});

describe('digits that name no line', () => {
  test('choose nothing, even with an Enter behind them, until a line is pointed at', () => {
    const list = run(toWater);
    const typed = [...'98911'].flatMap((digit) => type(digit));
    const after = run([...typed, ...press('enter')], list);
    expect(after.at).toBe(list.at);
    expect(after.answers).toEqual(list.answers);
    expect(after.row).toBe(list.row);
    expect(after.error).toContain('No line here has the number 9');
    expect(run(press('enter', 'enter'), after).answers).toEqual(list.answers);
    expect(run([...type('1'), ...press('enter')], after).answers['water-source']).toBe('town');
  });
});

test('what goes beyond the end of a field is left out and said', () => {
  const state = run([safe, ...type('x'.repeat(500), true)]);
  expect(state.notice).toMatch(/This field is full/);
  expect(run(press('ctrl-u'), state)).toMatchObject({ notice: null, field: { text: '' } });
});
