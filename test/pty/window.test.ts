import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Size } from './open-terminal';
import type { Sitting } from './sittings-in';
import { smallTerminals } from './small-terminals';

const { start, sit } = smallTerminals();

/** How often a text stands on the screen. */
function count(terminal: Sitting, text: string): number {
  return terminal.text().split(text).length - 1;
}

/** Past the well pump, with 900 W. Each question is waited for. */
async function toWaste(terminal: Sitting): Promise<void> {
  terminal.press('3 \roak\r');
  await terminal.shows('Where does your water');
  terminal.press('2\r');
  await terminal.shows('How many watts');
  terminal.press('900\r');
  await terminal.shows('Which of these move');
}

function expectWithin(terminal: Sitting, { columns, rows }: Size): void {
  const lines = terminal.lines();
  expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(columns);
  // Two lines stay free: a frame as tall as the window would make the terminal scroll.
  expect(lines.slice(rows - 2).join('')).toBe('');
  expect(terminal.scrolledOff()).toBe(0);
}

const SIZES: Size[] = [
  { columns: 30, rows: 10 },
  { columns: 40, rows: 24 },
  { columns: 80, rows: 24 },
  { columns: 120, rows: 40 },
];

const TOO_SMALL: Size[] = [
  { columns: 1, rows: 1 },
  { columns: 2, rows: 24 },
  { columns: 6, rows: 24 },
  { columns: 29, rows: 10 },
  { columns: 80, rows: 9 },
  { columns: 80, rows: 2 },
];

describe('the window, through a pseudo-terminal', () => {
  it.each(SIZES)('never overflows at $columns columns and $rows rows', async (size) => {
    const terminal = await sit({ size });
    expectWithin(terminal, size);
    const steps: [string, string][] = [
      ['1 \r', 'Leave the house'],
      ['\x1b', '1. ['],
      ['?', '> Back to the question'],
      ['\x1b', '1. ['],
      ['\t', 'Check these now'],
      ['\x1b[B'.repeat(30), '> Everyone is safe now.'],
      ['\r', 'What shall we call'],
      [`${'a very long name that goes on '.repeat(6)}\r`, 'Error:'],
      ['\x1b[B\x1b[B\x1b[B', '> '],
      ['\x1b[A\x1b[A\x1b[A\x15oak\r', 'Where does your water'],
      ['2\r', 'How many watts'],
      ['200\r', '200 W is more or less'],
      ['\x1b[B\r', 'Which of these move'],
      ['\t', 'ZIP code?'],
      ['48911\r', 'How long should the home'],
      ['3 days\r', 'Check your answers'],
      ['\x1b[B'.repeat(6), '> ? Pumps for waste'],
    ];
    for (const [keys, text] of steps) {
      terminal.press(keys);
      await terminal.shows(text);
      expectWithin(terminal, size);
    }
  });

  it('names every key at the foot, at 40 columns too', async () => {
    const terminal = await sit({ size: { columns: 40, rows: 24 } });
    for (const key of ['? help', 'Esc back', 'Tab not sure', 'Ctrl+S save and stop']) {
      await terminal.shows(key);
    }
  });

  it('shows the plan so far beside the question from 100 columns on, below it under 100', async () => {
    const wide = await sit({ size: { columns: 120, rows: 40 } });
    await toWaste(wide);
    await wide.shows('About $900');
    expect(wide.lines()[2]).toMatch(/Which of these move water.*A made-up pack/);
    const narrow = await sit();
    await toWaste(narrow);
    await narrow.shows('About $900');
    const at = (text: string) => narrow.lines().findIndex((line) => line.includes(text));
    expect(at('About $900')).toBeGreaterThan(at('A sump pump'));
  });

  it.each([
    ['narrower', { columns: 100, rows: 30 }, { columns: 42, rows: 24 }],
    ['wider', { columns: 42, rows: 24 }, { columns: 120, rows: 40 }],
    ['shorter', { columns: 80, rows: 24 }, { columns: 80, rows: 12 }],
  ])('draws anew when the window becomes %s, leaving nothing behind', async (_, first, after) => {
    const terminal = await sit({ size: first });
    terminal.press('3 \roak');
    await terminal.shows('[ oak');
    const before = terminal.raw().length;
    terminal.resize(after);
    await terminal.until('one whole frame on a cleared window', () => {
      // Until the program has heard of the new size, the old frame stands there, cropped.
      if (!terminal.raw().slice(before).includes('\x1b[2J')) return false;
      const lines = terminal.lines();
      const top = /^(Right now|What shall we call)/.test(lines[0] ?? '');
      const free = lines.slice(after.rows - 2).join('') === '';
      return top && free && count(terminal, '[ oak') === 1;
    });
    expectWithin(terminal, after);
    expect(count(terminal, 'What shall we call')).toBe(1);
    terminal.press('\r');
    // On a busy machine the new size may reach the program only now: what it comes to rest on counts.
    await terminal.until('the next question alone, within the window', () => {
      const lines = terminal.lines();
      const free = lines.slice(after.rows - 2).join('') === '';
      const next = count(terminal, 'Where does your water') === 1;
      return next && free && count(terminal, '[ oak') === 0;
    });
    expectWithin(terminal, after);
  });

  it('leaves the page the program was started from as it was', async () => {
    const terminal = await start();
    terminal.press('3 \r\x13');
    await terminal.ended();
    expect(terminal.lines().filter((line) => line !== '')).toEqual(['Ended: saved']);
  });

  it('says in each window too small that it is, takes keys and loses nothing', async () => {
    const terminal = await sit();
    terminal.press('3 \roak');
    await terminal.shows('[ oak ');
    let typed = 'oak';
    for (const size of TOO_SMALL) {
      terminal.resize(size);
      await terminal.until(`one line at ${size.columns} columns and ${size.rows} rows`, () => {
        const lines = terminal.lines().filter((line) => line !== '');
        return lines.length === 1 && /^(Thi|Too|Mak|Sma|Sm|S)/.test(lines[0]!);
      });
      expect(terminal.scrolledOff()).toBe(0);
      terminal.press('-a');
      // Neither Tab nor Up answers or moves what cannot be seen.
      terminal.press('\t\x1b[A');
      await new Promise((resolve) => setTimeout(resolve, 60));
      terminal.resize({ columns: 80, rows: 24 });
      typed += '-a';
      await terminal.shows(`[ ${typed} `);
    }
    terminal.press('\r');
    await terminal.shows('Where does your water');
  });

  it('leaves on Ctrl+C from a window of one column, the text kept', async () => {
    const terminal = await sit();
    terminal.press('3 \roak');
    await terminal.shows('[ oak ');
    terminal.resize({ columns: 1, rows: 1 });
    await terminal.until('the small line', () => /^S/.test(terminal.lines()[0] ?? ''));
    terminal.press('\x03');
    expect(await terminal.ended()).toBe('interrupted');
    const state = JSON.parse(readFileSync(join(terminal.folder, 'state.json'), 'utf8'));
    expect(state.answers['home-name']).toBe('oak');
  });

  it('chooses no line that cannot be seen', async () => {
    const terminal = await sit();
    terminal.press('3 \roak\r');
    await terminal.shows('Where does your water');
    terminal.resize({ columns: 6, rows: 6 });
    await terminal.until('the small line', () => /^Small/.test(terminal.lines()[0] ?? ''));
    terminal.press('2\r');
    await new Promise((resolve) => setTimeout(resolve, 60));
    terminal.resize({ columns: 80, rows: 24 });
    await terminal.shows('Keys pressed before this');
    await terminal.shows('Where does your water');
  });
});
