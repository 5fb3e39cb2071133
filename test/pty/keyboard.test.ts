import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { State } from '../../src/interview/state';
import type { Sitting } from './sittings-in';
import { smallTerminals } from './small-terminals';

const NAME = 'What shall we call this home?';
const WATER = 'Where does your water come from?';
const WATTS = 'How many watts does the well pump use?';
const WASTE = 'Which of these move water out of the home?';

const { start, sit } = smallTerminals();

type Terminal = Omit<Sitting, 'ended'>;

/** Past the first question, at the field for the name. */
const atName = async () => toName(await sit());

async function toName<T extends Terminal>(terminal: T): Promise<T> {
  terminal.press('3 \r');
  await terminal.shows(NAME);
  return terminal;
}

function stateOf(terminal: Terminal): State {
  return JSON.parse(readFileSync(join(terminal.folder, 'state.json'), 'utf8'));
}

/** The terminal as the program found it: first page, cursor shown, pastes unmarked. */
function expectRestored(terminal: Terminal): void {
  const raw = terminal.raw();
  const lastOf = (sequence: string) => raw.lastIndexOf(sequence);
  expect(lastOf('\x1b[?1049l')).toBeGreaterThan(lastOf('\x1b[?1049h'));
  expect(lastOf('\x1b[?2004l')).toBeGreaterThan(lastOf('\x1b[?2004h'));
  expect(lastOf('\x1b[?25h')).toBeGreaterThan(lastOf('\x1b[?25l'));
}

describe('the keyboard, through a pseudo-terminal', () => {
  it('takes a run of keys in one chunk as far as the opening is fixed, and says it dropped the rest', async () => {
    const terminal = await sit();
    terminal.press('3 \roak\r2\r900\r');
    await terminal.shows('Keys pressed before this stood on the screen were not used.');
    expect(terminal.text()).toContain(WATER);
    expect(terminal.text()).not.toMatch(/^> /m);
    terminal.press('2\r');
    await terminal.shows(WATTS);
    expect(terminal.text()).not.toContain('Keys pressed');
    terminal.press('900\r');
    await terminal.shows(WASTE);
    terminal.press('\x03');
    await terminal.ended();
    expect(stateOf(terminal).answers).toEqual({
      'now-danger': ['none'],
      'home-name': 'oak',
      'water-source': 'well',
      'well-watts': 900,
    });
  });

  it('takes abc and Enter typed at once, and answers nothing by thirty Enters, at once or one by one', async () => {
    const terminal = await atName();
    terminal.press('abc\r');
    await terminal.shows(WATER);
    terminal.press('\r'.repeat(30));
    await terminal.shows('Error: Go to your answer with Up and Down');
    for (let i = 0; i < 30; i++) {
      terminal.press('\r');
      await new Promise((resolve) => setTimeout(resolve, 10));
    }
    expect(terminal.text()).toContain(WATER);
    expect(terminal.text()).not.toMatch(/^> /m);
    terminal.press('\x13');
    await terminal.ended();
    expect(stateOf(terminal).answers).toEqual({ 'now-danger': ['none'], 'home-name': 'abc' });
  });

  it('takes Enter as \\r and as \\n, and one too many as no answer to the number asked back', async () => {
    const terminal = await atName();
    terminal.press('oak\n');
    await terminal.shows(WATER);
    terminal.press('2\r');
    await terminal.shows(WATTS);
    terminal.press('5000\r\r\r');
    await terminal.shows('5,000 W is more or less');
    terminal.press('\r');
    await terminal.shows('Error: Go to the line you choose');
    await terminal.shows('5,000 W is more or less');
  });

  it('keeps a pasted line end from entering', async () => {
    const terminal = await atName();
    terminal.press('\x1b[200~oak\nhouse\n\x1b[201~');
    await terminal.shows('[ oak house ');
    expect(terminal.text()).toContain(NAME);
    terminal.press('\r');
    await terminal.shows(WATER);
    terminal.press('\x13');
    await terminal.ended();
    expect(stateOf(terminal).answers['home-name']).toBe('oak-house');
  });

  it('edits the field: drops what it does not know, erases, shows the cursor, and asks why in between', async () => {
    const terminal = await atName();
    // Sequences it does not know, Ctrl+F1 among them.
    terminal.press('a\x1b[1;5Pb\x1b[15~c\x1b[I\x1b[<0;3;4M\x1b]0;x\x07d\x1b[[Ae');
    await terminal.shows('[ abcde ');
    // Backspace, held.
    terminal.press('fgh');
    await terminal.shows('[ abcdefgh ');
    terminal.press('\x7f\x7f\x7f\x7f\x7f');
    await terminal.shows('[ abc ');
    terminal.press('\x7f'.repeat(50));
    await terminal.hides('[ a');
    expect(terminal.text()).toContain(NAME);
    // An emoji goes whole.
    terminal.press('a👩‍🌾');
    await terminal.shows('👩');
    terminal.press('\x7f');
    await terminal.hides('👩');
    await terminal.shows('[ a ');
    // The terminal's own cursor stands behind the typed text.
    terminal.press('sh');
    await terminal.shows('[ ash ');
    const y = terminal.lines().findIndex((line) => line.includes('[ ash'));
    const x = terminal.lines()[y]!.indexOf('ash') + 3;
    await terminal.until('the cursor', () => {
      const at = terminal.cursor();
      return at.x === x && at.y === y;
    });
    // Why it is asked leaves the text as it was.
    terminal.press('?');
    await terminal.shows('> Back to the question');
    terminal.press('\x1b');
    await terminal.shows('[ ash ');
    terminal.press('\r');
    await terminal.shows(WATER);
  });

  it('puts together a sequence that comes in two pieces, and neither stops nor goes on by an Enter too many where a danger is told', async () => {
    const terminal = await sit();
    terminal.press('\x1b');
    terminal.press('[B');
    await terminal.shows('> 1. [ ] I smell gas');
    terminal.press('\t\r\r\r\r');
    await terminal.shows('Check these now');
    terminal.press('\r');
    await terminal.shows('Go down to the line you choose');
    await terminal.shows('> Read this first');
    terminal.press('\x1b[B\x1b[B\r');
    await terminal.shows(NAME);
  });

  it('keeps a typed name on Ctrl+S, and says why another cannot be', async () => {
    const terminal = await atName();
    terminal.press('taken\x13');
    await terminal.shows('A home of that name is here already.');
    terminal.press('\x15oak\x13');
    await terminal.ended();
    expect(stateOf(terminal)).toMatchObject({ ending: 'saved', answers: { 'home-name': 'oak' } });
  });

  it('keeps what stands in the field when the terminal is closed over it', async () => {
    const terminal = await toName(await start());
    terminal.press('oak\r');
    await terminal.shows(WATER);
    terminal.press('2\r');
    await terminal.shows(WATTS);
    terminal.press('15');
    await terminal.shows('[ 15 ');
    terminal.kill('SIGHUP');
    await terminal.ended();
    const saved = readFileSync(join(terminal.folder, 'saved.jsonl'), 'utf8').trim().split('\n');
    expect(JSON.parse(saved.at(-1)!)).toMatchObject({
      answers: { 'home-name': 'oak', 'water-source': 'well' },
      unfinished: { 'well-watts': '15' },
    });
  });

  it('keeps the field through a change of the window, each answer before the next question, and goes back on Esc', async () => {
    const terminal = await atName();
    terminal.press('oak-hou');
    await terminal.shows('[ oak-hou ');
    terminal.resize({ columns: 44, rows: 20 });
    terminal.press('se');
    await terminal.shows('[ oak-house ');
    terminal.press('\r');
    await terminal.shows('Where does your water');
    const saved = readFileSync(join(terminal.folder, 'saved.jsonl'), 'utf8').trim().split('\n');
    const { answers } = JSON.parse(saved.at(-1)!);
    expect(answers).toEqual({ 'now-danger': ['none'], 'home-name': 'oak-house' });
    terminal.press('\x1b');
    await terminal.shows('[ oak-house ');
  });

  it('takes Tab as not sure and says the range that leaves', async () => {
    const terminal = await atName();
    terminal.press('oak\r');
    await terminal.shows(WATER);
    terminal.press('2\r');
    await terminal.shows(WATTS);
    terminal.press('\t');
    await terminal.shows('$600 to $2,000');
  });

  it('stops on Ctrl+S, the terminal as it was found', async () => {
    const terminal = await toName(await start());
    terminal.press('oak\r\x13');
    const { exitCode } = await terminal.ended();
    expect(exitCode).toBe(0);
    await terminal.shows('Ended: saved');
    expectRestored(terminal);
  });

  it.each([
    ['at the first question', ''],
    ['in the middle of a text', '3 \rabc'],
    ['inside an unfinished sequence', '3 \rabc\x1b[1;'],
    ['inside an unfinished paste', '3 \r\x1b[200~abc'],
    ['on the help screen', '?'],
    ['on the act-now screen', '1 \r'],
  ])('leaves on Ctrl+C %s', async (_, before) => {
    const terminal = await sit();
    terminal.press(`${before}\x03`);
    expect(await terminal.ended()).toBe('interrupted');
    expect(stateOf(terminal).ending).toBe('interrupted');
    expectRestored(terminal);
  });

  it('ends the program with 130 on Ctrl+C', async () => {
    const terminal = await start();
    terminal.press('3 \rabc\x1b[1;\x03');
    expect((await terminal.ended()).exitCode).toBe(130);
    expect(stateOf(terminal).ending).toBe('interrupted');
    expectRestored(terminal);
  });

  it.each([
    ['SIGTERM', 143],
    ['SIGQUIT', 131],
    ['SIGINT', 130],
  ] as const)(
    'gives the terminal back and keeps what was begun at %s from outside',
    async (signal, code) => {
      const terminal = await toName(await start());
      terminal.press('oa');
      await terminal.shows('[ oa ');
      process.kill(terminal.pid, signal);
      expect((await terminal.ended()).exitCode).toBe(code);
      expectRestored(terminal);
      expect(readFileSync(join(terminal.folder, 'saved.jsonl'), 'utf8')).toMatch(
        /"home-name":"oa"/,
      );
    },
  );

  it('goes on without sums where the sums are at fault, each answer kept first', async () => {
    const terminal = await sit();
    writeFileSync(join(terminal.folder, 'sums-fail'), '');
    terminal.press('3 \r');
    // The sums of the danger question may fail first: what counts is that the next question comes all the same.
    await terminal.shows(NAME);
    await terminal.shows('No sums just now.');
    const saved = readFileSync(join(terminal.folder, 'saved.jsonl'), 'utf8');
    expect(saved).toContain('now-danger');
    terminal.press('oak\r');
    await terminal.shows(WATER);
  });

  it('says that the answers cannot be kept for as long as they cannot', async () => {
    const terminal = await sit();
    writeFileSync(join(terminal.folder, 'disk-is-full'), '');
    terminal.press('3 \r');
    await terminal.shows(NAME);
    await terminal.shows('The disk is full.');
    terminal.press('oak\r');
    await terminal.shows(WATER);
    await terminal.shows('The disk is full.');
    rmSync(join(terminal.folder, 'disk-is-full'));
    terminal.press('2\r');
    await terminal.shows(WATTS);
    await terminal.hides('The disk is full.');
    const saved = readFileSync(join(terminal.folder, 'saved.jsonl'), 'utf8').trim();
    expect(JSON.parse(saved).answers).toMatchObject({ 'home-name': 'oak', 'water-source': 'well' });
  });
});
