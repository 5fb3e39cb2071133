import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { smallTerminals } from './small-terminals';

const NAME = 'What shall we call this home?';
const { start } = smallTerminals();

/** The program as a job of a shell, as people have it. */
const inShell = () => start({ shell: true });

describe('Ctrl+Z, in a shell', () => {
  it('stops with the terminal as it was, and what is typed there answers nothing', async () => {
    const terminal = await inShell();
    terminal.press('3 \roak');
    await terminal.shows('[ oak ');
    terminal.press('\x1a');
    await terminal.shows('Stopped');
    // Behind its own word for it the shell may set modes of its own.
    const raw = terminal.raw().slice(0, terminal.raw().lastIndexOf('Stopped'));
    for (const [on, off] of [
      ['\x1b[?1049h', '\x1b[?1049l'],
      ['\x1b[?2004h', '\x1b[?2004l'],
      ['\x1b[?25l', '\x1b[?25h'],
    ] as const) {
      expect(raw.lastIndexOf(off)).toBeGreaterThan(raw.lastIndexOf(on));
    }
    // The shell echoes what is typed: the terminal is in its own mode again.
    terminal.press('echo shell-$((40+2))\r');
    await terminal.shows('shell-42');
    terminal.press('fg\r');
    await terminal.shows('[ oak ');
    expect(terminal.text()).toContain(NAME);
    terminal.press('-house\r');
    await terminal.shows('Where does your water');
    terminal.press('\x13');
    await terminal.shows('Ended: saved');
    const state = JSON.parse(readFileSync(join(terminal.folder, 'state.json'), 'utf8'));
    expect(state.answers).toEqual({ 'now-danger': ['none'], 'home-name': 'oak-house' });
  });

  it('takes the terminal again after a stop from outside', async () => {
    const terminal = await inShell();
    terminal.press('3 \roak');
    await terminal.shows('[ oak ');
    terminal.press('\x1a');
    await terminal.shows('Stopped');
    terminal.press('fg\r');
    await terminal.shows('[ oak ');
    terminal.press('\x1a');
    await terminal.until('a second stop', () => terminal.text().split('Stopped').length >= 3);
    terminal.press('fg\r');
    await terminal.shows('[ oak ');
    terminal.press('\x7f');
    await terminal.shows('[ oa ');
  });

  it('drops what is typed right behind it', async () => {
    const terminal = await inShell();
    terminal.press('3 \roak\x1afg\r');
    await terminal.shows('Stopped');
    terminal.press('fg\r');
    await terminal.shows('[ oak ');
  });
});

describe('Ctrl+Z, where no shell waits', () => {
  it('goes on as before', async () => {
    const terminal = await start();
    terminal.press('3 \roak');
    await terminal.shows('[ oak ');
    terminal.press('\x1a');
    await terminal.until('the screen taken again', () => {
      const raw = terminal.raw();
      return (
        raw.lastIndexOf('\x1b[?1049h') > raw.lastIndexOf('\x1b[?1049l') &&
        raw.includes('\x1b[?1049l')
      );
    });
    terminal.press('-house');
    await terminal.shows('[ oak-house ');
  });
});
