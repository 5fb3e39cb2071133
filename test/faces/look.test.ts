import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { showDraft } from '../../src/commands/talk/show-draft';
import { frameHeight } from '../../src/faces/screen/frame';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { lineWidth, shorten } from '../../src/faces/screen/line';
import { reduce } from '../../src/interview/reduce';
import type { State } from '../../src/interview/state';
import { draftMaker } from '../../src/plan/draft/draft-of';
import { context, told, views } from './every-view';
import { windowSizes } from './window-sizes';

const draft = showDraft(draftMaker(interview)(told));

function lines(state: State, columns: number, rows: number): string[] {
  const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
  const frame = frameOf({ context, state, draft, changed: null, size: { columns, rows }, glyphs });
  expect(frame.lines.length).toBeLessThanOrEqual(frameHeight(rows));
  for (const line of frame.lines) expect(lineWidth(line)).toBeLessThanOrEqual(columns);
  return frame.lines.map((line) => line.map(({ text }) => text).join(''));
}

/** Without the plan beside it. */
const left = (all: readonly string[]) => all.map((line) => line.replace(/│.*$/, '').trimEnd());
const flat = (all: readonly string[]) => left(all).join(' ').replace(/\s+/g, ' ');

describe.each(windowSizes)('at %i x %i', (columns, rows) => {
  test.each(views)('%s: title first, the way out last, and no key cut', (name, state, title) => {
    const shown = lines(state, columns, rows);
    const head = flat(shown.slice(0, 4));
    expect(head).toContain(title);
    const wayOut = name === 'welcome' ? 'Ctrl+C stop' : 'Ctrl+S save and stop';
    const foot = left(shown)
      .filter((line) => line !== '')
      .slice(-3);
    expect(foot.at(-1)).toMatch(new RegExp(`${wayOut.replace('+', '\\+')}$`));
    expect(foot.at(-1)).not.toContain('…');
  });

  test('where we are stands above the question, from 40 columns on', () => {
    if (columns < 40) return;
    for (const [, state] of views.filter(([, { view }]) => view === 'ask')) {
      const topic = interview.questions.find(({ id }) => id === state.at)!.topic;
      const title = interview.topics.find(({ id }) => id === topic)!.title;
      expect(lines(state, columns, rows)[0]).toContain(title);
    }
  });

  test('the hint is never lost: it begins below the question, and help holds all of it', () => {
    for (const [name, state] of views.filter(([, { view }]) => view === 'ask')) {
      const { hint } = interview.questions.find(({ id }) => id === state.at)!;
      const begins = hint.split(' ').slice(0, 3).join(' ');
      expect(flat(lines(state, columns, rows)), name).toContain(begins);
      const help = reduce(context, state, { type: 'act', act: 'help' });
      const all = lines(help, columns, 200);
      expect(flat(all), name).toContain(`${hint}.`);
    }
  });

  test('a blank line stands only where everything of a question is in sight', () => {
    for (const [name, state] of views.filter(([, { view }]) => view === 'ask')) {
      const shown = left(lines(state, columns, rows));
      const cut = shown.some((line) => /\d+ more (above|below)/.test(line));
      const own = shown.slice(
        0,
        shown.findIndex((line) => /more below/.test(line)),
      );
      if (cut)
        expect(
          own.filter((line) => line === ''),
          name,
        ).toEqual([]);
    }
  });

  test('a wide window holds the plan so far beside what is read, without a jump', () => {
    if (columns < 120) return;
    for (const [name, state] of views.filter(([, { view }]) => view === 'ask' || view === 'help')) {
      expect(lines(state, columns, rows).join('\n'), name).toContain('│ Your plan so far');
    }
  });
});

test('a text is cut after a whole word, unless one word is most of it', () => {
  expect(shorten('a generator wired to the house', 20, '…')).toBe('a generator wired…');
  expect(shorten('a generator wired to the house', 18, '…')).toBe('a generator wired…');
  expect(shorten('oxygen-concentrator', 10, '…')).toBe('oxygen-co…');
  expect(shorten('short', 10, '…')).toBe('short');
});
