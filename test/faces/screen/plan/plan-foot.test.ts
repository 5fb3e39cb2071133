import { expect, test } from 'vitest';
import { NAMES } from '../../key-names';
import { Reader } from './small-plan';

const tall = { columns: 100, rows: 44 };
const usual = { columns: 80, rows: 24 };

/** Every view of the plan, by the keys that lead there. */
const VIEWS: readonly (readonly [string, (reader: Reader) => Reader])[] = [
  ['front page', (reader) => reader],
  ['a passage', (reader) => reader.key('right', 2).key('down')],
  ['its end', (reader) => reader.key('end')],
  ['sections', (reader) => reader.key('enter')],
  ['the middle of the sections', (reader) => reader.key('enter').key('down', 2)],
  ['find', (reader) => reader.type('/')],
  ['a word to find', (reader) => reader.type('/sentence')],
  ['found', (reader) => reader.type('/sentence').key('enter').key('right', 3)],
  ['all keys', (reader) => reader.type('?')],
  ['leaving', (reader) => reader.type('q')],
  ['homes', (reader) => reader.type('n')],
];

const signs = [
  ...[...'nqy'].map((text) => [{ name: 'text', text }, new RegExp(`\\b${text.toUpperCase()}\\b`)]),
  [{ name: 'text', text: '/' }, /(^|\s)\/(\s|:)/m],
] as unknown as typeof NAMES;

const where = ({ state, left }: Reader) =>
  JSON.stringify([{ ...state, says: null, digits: '' }, left]);

test.each(VIEWS)('the foot, or the page of all keys it leads to, names every key: %s', (_, to) => {
  for (const size of [tall, usual]) {
    const here = to(new Reader(size));
    const foot = here.lines().slice(-4).join('\n');
    const page =
      here.state.view === 'keys' || /\? all keys/.test(foot)
        ? new Reader({ columns: 80, rows: 60 }).type('?').text()
        : '';
    const typing = here.state.view === 'find';
    const unnamed = [...NAMES, ...signs].flatMap(([key, name]) => {
      const edits = typing && ['text', 'left', 'right', 'home', 'end'].includes(key.name);
      if (edits || name.test(foot) || name.test(page)) return [];
      const back = /Any other key/.test(foot);
      const after = to(new Reader(size)).press(key);
      const returns = back && after.state.view !== here.state.view && after.left === null;
      if (returns || where(after) === where(here)) return [];
      return [key.name === 'text' ? key.text : key.name];
    });
    expect(unnamed).toEqual([]);
  }
});
