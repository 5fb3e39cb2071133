import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { showDraft, showGlance } from '../../src/commands/talk/show-draft';
import { glanceWords } from '../../src/faces/glance-words';
import { frameHeight } from '../../src/faces/screen/frame';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { lineWidth } from '../../src/faces/screen/line';
import { begin, show } from '../../src/interview/begin';
import type { Question } from '../../src/interview/questions/question';
import { reduce } from '../../src/interview/reduce';
import { type Row, rowsOf } from '../../src/interview/rows';
import type { Context, State } from '../../src/interview/state';
import { draftMaker } from '../../src/plan/draft/draft-of';
import { frozenPlan } from '../frozen-plans';
import { answersOf } from '../households/read-household';
import { windowSizes } from './window-sizes';

const context: Context = {
  interview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'my-home',
};
const sizes = [
  { columns: 40, rows: 24 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
  { columns: 30, rows: 10 },
  { columns: 200, rows: 60 },
];
const answers = {
  'now-danger': ['none'],
  'home-name': 'kim',
  'home-zip': '48911',
  'heat-main': 'gas-furnace',
  'fridge-count': 2,
  'must-run': ['heat', 'fridge'],
};
const draft = showDraft(draftMaker(interview)(answers));
const glyphs = glyphsFor({ LANG: 'C.UTF-8' });

function draw(state: State, size: (typeof sizes)[number]) {
  const frame = frameOf({ context, state, draft, size, glyphs });
  const text = frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
  return { frame, text };
}

function at(question: Question): State {
  return show(context, { ...begin(context, {}), answers }, question.id);
}

/** True when the line is the first one of the row. */
function startsRow(line: string, row: Row, i: number): boolean {
  const text = line.slice(2);
  if (row.kind === 'field') return text.startsWith('[ ') && !/^\[ \] \S/.test(text);
  if (row.kind === 'choice') return text.startsWith(`${i + 1}. `);
  return text.startsWith(row.label.slice(0, 12));
}

/** The words of a text without line breaks, marks and pane, to look for a sentence in. */
function flat(text: string): string {
  return text.replace(/[│|].*$/gm, ' ').replace(/\s+/g, ' ');
}

describe.each(sizes)('at $columns x $rows', (size) => {
  const drawn = new Map<string, ReturnType<typeof draw>>();
  /** The frame of a question as it is asked first, drawn once. */
  const drawnAt = (question: Question) => {
    const known = drawn.get(question.id) ?? draw(at(question), size);
    drawn.set(question.id, known);
    return known;
  };

  test('no frame of any question is wider than the window or taller than two lines less', () => {
    const wrong: string[] = [];
    for (const question of interview.questions) {
      const help = reduce(context, at(question), { type: 'act', act: 'help' });
      for (const [view, { frame }] of Object.entries({
        ask: drawnAt(question),
        help: draw(help, size),
      })) {
        if (frame.lines.length > frameHeight(size.rows))
          wrong.push(`${question.id} ${view} is too tall`);
        if (frame.lines.some((line) => lineWidth(line) > size.columns))
          wrong.push(`${question.id} ${view} is too wide`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('the question, every key and the way to be unsure are in sight', () => {
    if (size.rows < 20) return;
    const wrong: string[] = [];
    for (const question of interview.questions) {
      const words = flat(drawnAt(question).text);
      for (const part of ['? help', 'Esc back', 'Tab not sure', 'Ctrl+S save and stop']) {
        if (!words.includes(part)) wrong.push(`${question.id} lacks ${part}`);
      }
      if (!words.includes(question.ask.split(' ').slice(0, 3).join(' ')))
        wrong.push(`${question.id} lacks its question`);
    }
    expect(wrong).toEqual([]);
  });

  test('every line of a question is in sight or counted as above or below, from 20 rows on', () => {
    if (size.rows < 20) return;
    const wrong: string[] = [];
    for (const question of interview.questions) {
      const state = at(question);
      const rows = rowsOf(context, state);
      for (const row of [0, Math.floor(rows.length / 2), rows.length - 1]) {
        const { text } = draw({ ...state, row }, size);
        const lines = text.split('\n').map((line) => line.replace(/ [│|] .*$/, ''));
        const hidden = lines.flatMap((line) => /^ {2}[↑↓] (\d+) more/.exec(line)?.[1] ?? []);
        const seen = rows.filter((one, i) => lines.some((line) => startsRow(line, one, i)));
        const counted = hidden.reduce((sum, count) => sum + Number(count), 0);
        if (seen.length + counted !== rows.length)
          wrong.push(`${question.id} row ${row}: ${seen.length} seen, ${counted} counted`);
      }
    }
    expect(wrong).toEqual([]);
  });

  test('the list of answers and what to do now fit too', () => {
    const check: State = { ...at(interview.questions[5]!), view: 'check', row: 0 };
    const danger = reduce(context, begin(context, {}), {
      type: 'answer',
      answer: ['gas-smell', 'unwell', 'water-electric'],
    });
    for (const state of [check, danger]) {
      const { frame } = draw(state, size);
      expect(frame.lines.length).toBeLessThanOrEqual(frameHeight(size.rows));
      expect(Math.max(...frame.lines.map(lineWidth))).toBeLessThanOrEqual(size.columns);
    }
  });

  test('that nothing can be kept stands on every view', () => {
    const unsaved = 'Nothing can be kept here. Could not write here: the disk is full. Free some.';
    const ask = at(interview.questions.find((q) => q.id === 'people-count')!);
    const danger = reduce(context, begin(context, {}), {
      type: 'answer',
      answer: ['gas-smell', 'unwell', 'water-electric'],
    });
    const views: State[] = [
      ask,
      { ...ask, view: 'check' },
      reduce(context, ask, { type: 'act', act: 'help' }),
      { ...ask, view: 'unusual', unusual: { value: 30, said: '30 people' } },
      danger,
      { ...ask, view: 'read-back' },
    ];
    const silent = views.filter((state) => {
      const { frame, text } = draw({ ...state, unsaved }, size);
      expect(frame.lines.length).toBeLessThanOrEqual(frameHeight(size.rows));
      return !flat(text).includes('Nothing can be kept');
    });
    expect(silent.map(({ view }) => view)).toEqual([]);
  });
});

test('the plan so far stands beside the question from 100 columns on, and changes with an answer', () => {
  const state = at(interview.questions.find((q) => q.id === 'freezer-count')!);
  const wide = { columns: 120, rows: 40 };
  expect(draw(state, wide).text).toContain('Your plan so far');
  const draftOf = draftMaker(interview);
  const told = answersOf('mill-lane');
  const before = draftOf(told).glance;
  const after = draftOf({ ...told, 'home-kind': 'apartment' }).glance;
  expect(before.missing).toEqual([]);
  expect(after.route!.kind).not.toBe(before.route!.kind);
  expect(glanceWords(showGlance(after))).not.toEqual(glanceWords(showGlance(before)));
});

test('the glance is the plan of as many drawn years: the same route, price and hours', () => {
  const told = answersOf('birch-street');
  const { route } = draftMaker(interview)(told).glance;
  const plan = frozenPlan(told, '2026-01-01', 5);
  const { kind, costUsd, lasting } = plan.advice.route;
  expect(route).toMatchObject({ kind, costUsd, hours: lasting.hours });
});

test('"not sure" leaves the sums wider than an answer does', () => {
  const draftOf = draftMaker(interview);
  const told = draftOf({ ...answers, 'fridge-count': 1 }).kwhPerDay!;
  const open = draftOf({ ...answers, 'fridge-count': 'not sure' }).kwhPerDay!;
  expect(open.high - open.low).toBeGreaterThan(told.high - told.low);
  expect(draftOf({ ...answers, 'fridge-count': 'not sure' }).unsureCount).toBe(1);
});

test('in the least window the first instruction is whole in sight', () => {
  const danger = reduce(context, begin(context, {}), { type: 'answer', answer: ['gas-smell'] });
  const { text } = draw(danger, { columns: 30, rows: 10 });
  expect(flat(text)).toContain('Leave now, and take everyone with you into the open air.');
});

test('a ZIP code told is read back by the town whose weather counts, before there is a plan', () => {
  const zip = { 'home-zip': '04401' };
  expect(draftMaker(interview)(zip).glance.nearTown).toBe('Bangor, Maine');
  expect(draftMaker(interview)({ 'home-zip': 'not sure' }).glance.nearTown).toBeNull();
  const state = { ...begin(context, zip), at: 'home-kind', answers: zip };
  const frame = frameOf({
    context,
    state,
    draft: showDraft(draftMaker(interview)(zip)),
    size: { columns: 80, rows: 24 },
    glyphs: glyphsFor({ LANG: 'C.UTF-8' }),
  });
  const text = frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
  expect(text).toContain('Weather as near Bangor, Maine.');
});

test('keys at the foot are whole at every size, and the way to save is among them', () => {
  const states = ['now-danger', 'home-zip', 'must-run', 'main-amps'].map((id) =>
    at(interview.questions.find((q) => q.id === id)!),
  );
  for (const state of states) {
    for (const [columns, rows] of windowSizes) {
      const lines = draw(state, { columns, rows }).text.split('\n');
      expect(flat(lines.join('\n'))).toContain('Ctrl+S save and stop');
      expect(lines.slice(-2).join('')).not.toContain('…');
    }
  }
});
