import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { smallTerminals } from './small-terminals';

const NAME = 'What shall we call this home?';
const { start } = smallTerminals();

describe('Ctrl+Z, in a shell', () => {
  it('stops each time with the terminal as it was, takes it again, and what is typed behind it or there answers nothing', async () => {
    // The program as a job of a shell, as people have it.
    const terminal = await start({ shell: true });
    const stops = () => terminal.raw().split('Stopped').length - 1;
    const stopped = (times: number) => terminal.until(`${times} stops`, () => stops() === times);

    const expectGivenBack = () => {
      // Behind its own word for it the shell may set modes of its own.
      const raw = terminal.raw().slice(0, terminal.raw().lastIndexOf('Stopped'));
      for (const [on, off] of [
        ['\x1b[?1049h', '\x1b[?1049l'],
        ['\x1b[?2004h', '\x1b[?2004l'],
        ['\x1b[?25l', '\x1b[?25h'],
      ] as const) {
        expect(raw.lastIndexOf(off)).toBeGreaterThan(raw.lastIndexOf(on));
      }
    };

    // What is typed right behind it is dropped.
    terminal.press('3 \roak\x1afg\r');
    await stopped(1);
    terminal.press('fg\r');
    await terminal.shows('[ oak ');

    terminal.press('\x1a');
    await stopped(2);
    expectGivenBack();
    // The shell echoes what is typed: the terminal is in its own mode again.
    terminal.press('echo shell-$((40+2)) job-$(jobs -p)\r');
    await terminal.shows('shell-42');
    const job = Number(/job-(\d+)/.exec(terminal.text())![1]);
    terminal.press('fg\r');
    await terminal.shows('[ oak ');
    expect(terminal.text()).toContain(NAME);

    // Stopped by somebody else.
    process.kill(job, 'SIGTSTP');
    await stopped(3);
    expectGivenBack();
    terminal.press('fg\r');
    await terminal.shows('[ oak ');
    terminal.press('\x7f');
    await terminal.shows('[ oa ');
    terminal.press('k-house\r');
    await terminal.shows('Where does your water');
    terminal.press('\x13');
    await terminal.shows('Ended: saved');
    const state = JSON.parse(readFileSync(join(terminal.folder, 'state.json'), 'utf8'));
    expect(state.answers).toEqual({ 'now-danger': ['none'], 'home-name': 'oak-house' });
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
