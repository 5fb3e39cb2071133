import { expect, test } from 'vitest';
import { eventFor } from '../../src/faces/screen/event-for';
import type { Frame } from '../../src/faces/screen/frame';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { NO_ROW } from '../../src/interview/keys/no-row';
import { reduce } from '../../src/interview/reduce';
import { rowsOf } from '../../src/interview/rows';
import type { State } from '../../src/interview/state';
import { at, context, later, told, views } from './every-view';
import { NAMES } from './key-names';

const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
/** A window with room for every key, and the usual one. */
const tall = { columns: 98, rows: 44 };
const usual = { columns: 80, rows: 24 };

const frame = (state: State, size: typeof tall) =>
  frameOf({ context, state, draft: null, changed: null, size, glyphs });
const textOf = ({ lines }: Frame) =>
  lines.map((line) => line.map((span) => span.text).join('')).join('\n');

/** What can be seen of a state, without what is said about the last key. */
function seen(state: State, size: typeof tall) {
  const scroll = Math.min(state.scroll, frame(state, size).maxScroll);
  return JSON.stringify({ ...state, scroll, error: null, notice: null, digits: '' });
}

/** Where a mark can stand in this view: where it stands and at both ends, with the text read to its begin and end. */
function places(state: State, size: typeof tall): State[] {
  const { maxScroll } = frame(state, size);
  const last = rowsOf(context, state).length - 1;
  const rows = [state.row, 0, last];
  return [...new Set(rows.filter((row) => row <= last))].flatMap((row) =>
    [...new Set([0, maxScroll])].map((scroll) => ({ ...state, row, scroll })),
  );
}

/** Keys that did something here though no word names them. */
function unnamed(state: State, size: typeof tall, besides: string): string[] {
  const shown = frame(state, size);
  const named = `${textOf(shown).split('\n').slice(-4).join(' ')} ${besides}`;
  const inField = rowsOf(context, state)[0]?.kind === 'field';
  return NAMES.flatMap(([key, name]) => {
    // What moves and types in a field is known from every other field.
    const edits = inField && ['left', 'right', 'home', 'end'].includes(key.name);
    const types = inField && key.name === 'text' && key.text !== '?';
    if (edits || types || name.test(named)) return [];
    const after = reduce(context, state, eventFor(state, key, shown));
    if (seen(after, size) === seen(state, size)) return [];
    return [key.name === 'text' ? key.text : key.name];
  });
}

const more: readonly (readonly [string, State])[] = [
  ['compare', { ...later, view: 'compare', changing: { before: told, queue: [], tried: {} } }],
  ['one choice', at('home-kind')],
  ['label', { ...at('main-amps'), view: 'label', label: { 'main-amps': 100 } }],
];

const all = [...views.map(([name, state]) => [name, state] as const), ...more];

test.each(all)('the foot of a tall window names every key that does something: %s', (_, state) => {
  const wrong = places(state, tall).flatMap((place) => unnamed(place, tall, ''));
  expect([...new Set(wrong)]).toEqual([]);
});

const help = reduce(context, at('home-kind'), { type: 'act', act: 'help' });
/** What help says of keys, below the foot's own. */
const keys = /\nKeys\s*\n([\s\S]*?)\n\s*\n/.exec(
  textOf(frame(help, { columns: 80, rows: 200 })),
)![1]!;

test.each(all)('at 80 x 24 the foot does, with the help of a question: %s', (_, state) => {
  const wrong = places(state, usual).flatMap((place) => unnamed(place, usual, keys));
  expect([...new Set(wrong)]).toEqual([]);
});

test('a number moves to a line to tick, and the foot says which key ticks it', () => {
  const press = (state: State, text: string) =>
    reduce(context, state, { type: 'key', key: { name: 'text', text } });
  const foot = (state: State) => textOf(frame(state, usual)).split('\n').slice(-3).join(' ');
  const fresh = { ...at('must-run'), row: NO_ROW, ticked: [] };
  expect(foot(fresh)).toContain('Up Down or number, Space ticks');
  const moved = press(fresh, '5');
  expect(moved.ticked).toEqual([]);
  expect(foot(moved)).toContain('Space ticks line 5');
  expect(foot(press(moved, ' '))).toContain('Space ticks, Enter goes on');
});
