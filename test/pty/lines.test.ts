import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PROGRAM } from '../fixtures/program';
import { furnaceOnly } from '../fixtures/quick-homes';
import { terminalsOf } from './terminals-of';

const start = terminalsOf(() => PROGRAM, 'Is anything dangerous');
const PEOPLE = 'Is anyone at home more at risk';

describe('line by line, in a terminal', () => {
  it('takes no line for a question that was not asked yet, and says so', async () => {
    const terminal = await start({ args: ['--plain'] });
    // The name, who lives here and their devices come next for everybody; what follows a device does not.
    terminal.press('9\r');
    await terminal.shows('Is that right?');
    terminal.press('yes\roak\r6\r13\r1\r1\r1\r1\r1\r');
    await terminal.shows('Power needed for health: None of these. Is that right?');
    await terminal.shows('Error: Lines typed before this was asked were not used.');
    await terminal.shows('more to a first plan');
    terminal.press('yes\r');
    await terminal.shows('Noted: Power needed for health: None of these.');
    terminal.press('stop\r');
    await terminal.ended();
    const kept = readFileSync(join(terminal.folder, 'oak.home.yaml'), 'utf8');
    expect(kept).toMatch(/medical-devices:\s+- none/);
    expect(kept).not.toMatch(/home-zip|home-kind/);
  });

  it('says an answer of life and death back and asks once; no asks again, and a danger waits for nothing; says what it understood, the words to type once and on help, and takes thirty Enters as nothing', async () => {
    const terminal = await start({ args: ['--plain'] });
    terminal.press('9\r');
    await terminal.shows(
      'Danger right now: None of these. Is that right? Type yes, or answer again.',
    );
    terminal.press('no\r');
    await terminal.shows('Type one or more numbers, such as 1, 3.');
    terminal.press('2\r');
    await terminal.shows('Do this now, before anything else');
    expect(terminal.raw()).not.toContain('Noted: Danger right now: None');

    await terminal.shows('2. It is over.');

    // Once it is over: what was understood is said, and the words to type once, then on help.
    const typed = async (line: string, shows: string) => {
      const before = terminal.raw().length;
      terminal.press(`${line}\r`);
      // What stood there before may stand there still.
      await terminal.until(`"${shows}" anew`, () => terminal.raw().slice(before).includes(shows));
    };
    await typed('2', 'such as 1, 3.');
    await typed('9', 'None of these. Is that right?');
    await typed('yes', 'What short name');
    await typed('oak', 'Noted: Name for the files: oak.');
    await terminal.shows(PEOPLE);
    const said = () => terminal.raw().replace(/\s+/g, ' ').split('unsure, help, back').length - 1;
    expect(said()).toBe(1);
    await typed('help', 'Words you can type: unsure, help, back');

    // Thirty Enters answer nothing.
    terminal.press('\r'.repeat(30));
    await terminal.shows('Error: Type the number of a line');
    terminal.press('stop\r');
    await terminal.ended();
    await terminal.shows('oak.home.yaml');
    expect(readFileSync(join(terminal.folder, 'oak.home.yaml'), 'utf8')).not.toContain(
      'people-risk',
    );
  });

  it('breaks no word at the edge of the window, and tells the plan a section at a time', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-lines-'));
    writeFileSync(join(folder, 'oak.home.yaml'), furnaceOnly('oak'));
    const size = { columns: 60, rows: 24 };
    const terminal = await start({ args: ['--plain', '--change', 'oak.home.yaml'], folder, size });
    const typed = async (line: string, shows: string) => {
      terminal.press(`${line}\r`);
      await terminal.shows(shows);
    };
    await typed('9', 'Is that right?');
    await typed('yes', 'Type write to write the plan');
    await typed('write', 'is all of this so?');
    await typed('1', 'Type next, the number of a section');
    expect(terminal.raw()).toContain('What to buy');
    expect(terminal.raw()).not.toContain('What it will not do');
    await typed('sections', '2. ');
    await typed('next', 'All of that running at once');
    const lines = terminal.raw().split(/\r?\n/);
    // What is longer than the window would be broken by the terminal, in the middle of a word.
    expect(lines.filter((line) => line.length > 60)).toEqual([]);
    terminal.press('stop\r');
    await terminal.shows('Your papers:');
    await terminal.ended();
  });
});
