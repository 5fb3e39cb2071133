import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HOMES_TITLE } from '../../src/faces/home-choice';
import { WELCOME, WELCOME_TITLE } from '../../src/faces/welcome-words';
import { PROGRAM } from '../fixtures/program';
import type { Size } from './open-terminal';
import { terminalsOf } from './terminals-of';

const FIRST = 'Is anything dangerous at home right now?';
const start = (title: string) => terminalsOf(() => PROGRAM, title);
const [atWelcome, atHomes] = [start('Lampkeeper: a plan'), start(HOMES_TITLE)];

function folderWith(homes: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-homes-'));
  for (const [name, text] of Object.entries(homes)) {
    writeFileSync(join(folder, `${name}.home.yaml`), text);
  }
  return folder;
}

const begun = (name: string) =>
  `lampkeeperHome: 1\nanswers:\n  home-name: ${name}\n  people-count: 3\n`;

const SIZES: Size[] = [
  { columns: 200, rows: 60 },
  { columns: 80, rows: 24 },
  { columns: 40, rows: 24 },
  { columns: 30, rows: 24 },
];

describe('the first screen', () => {
  it('of a new home says what comes in every window, and danger is the first question', async () => {
    const terminal = await atWelcome({ size: SIZES[0]! });
    const text = () => terminal.text().replace(/\s+/g, ' ');
    for (const size of SIZES) {
      const before = terminal.raw().length;
      if (size !== SIZES[0]) {
        terminal.resize(size);
        await terminal.until('a frame on a cleared window', () => {
          return terminal.raw().slice(before).includes('\x1b[2J') && text().includes('Enter begin');
        });
      }
      for (const sentence of WELCOME) expect(text()).toContain(sentence);
      expect(text()).toContain('Enter begin');
    }
    // Whatever is typed ahead answers nothing.
    terminal.press('\r\r\r9 \r');
    await terminal.shows('Is anything dangerous');
    await terminal.shows('Keys pressed before');
    expect(readdirSync(terminal.folder)).toEqual([]);
  });

  it('lists the homes of the folder with how far each has come', async () => {
    const folder = folderWith({ kim: begun('kim'), oak: begun('oak'), torn: 'answers: [' });
    writeFileSync(join(folder, 'oak.plan.md'), '# Plan');
    const terminal = await atHomes({ folder });
    await terminal.shows('1. kim: 2 answers, about');
    await terminal.shows('its plan is written');
    await terminal.shows('3. torn: this file has a fault');
    // Enter alone chooses none of them.
    terminal.press('\r');
    await terminal.shows('Error: Go to the line');
    terminal.press('2');
    await terminal.shows('> 2. oak');
    terminal.press('\r');
    await terminal.shows(FIRST);
    expect(existsSync(join(folder, '.oak.home.yaml.open'))).toBe(true);
  });

  it('begins another home on the street of one, with its place and prices and nothing else', async () => {
    const told =
      '  home-zip: "48911"\n  bill-price: 19 c/kWh\n  people-risk: [over-65]\n  budget-now: $500\n';
    const folder = folderWith({ kim: `${begun('kim')}${told}` });
    const terminal = await atHomes({ folder });
    await terminal.shows('on the street of kim');
    terminal.press('3\r');
    await terminal.shows(FIRST);
    await terminal.shows('Taken over from the home before');
    terminal.press('9 \r');
    await terminal.shows('What short name');
    terminal.press('lee\r');
    await terminal.shows('People');
    terminal.press('\x03');
    await terminal.ended();
    const kept = readFileSync(join(folder, 'lee.home.yaml'), 'utf8');
    const ids = [...kept.matchAll(/^ {2}([a-z-]+):/gm)].map((match) => match[1]);
    expect(ids).toEqual(['now-danger', 'home-name', 'home-zip', 'bill-price']);
  });

  it('begins another home from that list, and leaves it without a trace', async () => {
    const folder = folderWith({ kim: begun('kim') });
    const first = await atHomes({ folder });
    first.press('2\r');
    await first.shows(WELCOME_TITLE);
    first.press('\x03');
    await first.ended();
    const second = await atHomes({ folder, args: ['--plain'] });
    second.press('stop\r');
    expect((await second.ended()).exitCode).toBe(0);
    expect(readdirSync(folder)).toEqual(['kim.home.yaml']);
  });
});

describe('a screen that others see', () => {
  it('hides the name until Ctrl+O, closes at the next key or at the same, and names no file at the end', async () => {
    const folder = folderWith({ kim: begun('kim') });
    const terminal = await atHomes({ folder, args: ['--shared-screen'] });
    await terminal.shows('Ctrl+O show');
    expect(terminal.text()).not.toContain('kim');
    terminal.press('\x0f');
    await terminal.shows('1. kim');
    terminal.press('\x1b[B');
    await terminal.hides('kim');
    terminal.press('\r');
    await terminal.shows(FIRST);
    terminal.press('9 \r');
    await terminal.shows('Hidden on a shared screen');
    terminal.press('\x0f');
    await terminal.shows('Someone over 65');
    // A list stays open while one chooses in it; the key that opened it hides it again.
    terminal.press('\x1b[B');
    await terminal.shows('> 1. [ ]');
    terminal.press('\x0f');
    await terminal.hides('Someone over 65');
    terminal.press('\x13');
    await terminal.ended();
    await terminal.shows('Your answers are in a file in this folder.');
    expect(terminal.text()).not.toContain('kim');
  });
});
