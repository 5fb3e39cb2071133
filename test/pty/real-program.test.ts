import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, describe, expect, it } from 'vitest';
import { type OpenTerminal, openTerminal } from './open-terminal';

const program = fileURLToPath(new URL('../../src/bin/lampkeeper.mjs', import.meta.url));
const WINDOW = { columns: 80, rows: 24 };
const FIRST = 'Is anything dangerous at home right now?';
const NAME = 'What short name';
const PEOPLE = 'How many people';

const opened: OpenTerminal[] = [];
afterEach(() => {
  for (const terminal of opened.splice(0)) terminal.kill();
});

function start(args: readonly string[] = [], in_: { folder?: string; env?: object } = {}) {
  const terminal = openTerminal([program, ...args], WINDOW, in_);
  opened.push(terminal);
  return terminal;
}

async function atPeople(terminal: OpenTerminal): Promise<void> {
  await terminal.shows(FIRST);
  terminal.press('1 \r');
  await terminal.shows(NAME);
  terminal.press('oak-lane\r');
  await terminal.shows(PEOPLE);
}

describe('the program itself, through a pseudo-terminal', () => {
  it('keeps each answer in the home file, and goes on where it stopped', async () => {
    const first = start();
    await atPeople(first);
    first.press('4\r');
    await first.hides(PEOPLE);
    first.press('\x13');
    expect((await first.ended()).exitCode).toBe(0);
    await first.shows('To go on: lampkeeper oak-lane.home.yaml');
    const kept = readFileSync(join(first.folder, 'oak-lane.home.yaml'), 'utf8');
    expect(kept).toMatch(/people-count: 4/);

    const again = start(['oak-lane.home.yaml'], { folder: first.folder });
    // Danger is asked afresh at every sitting.
    await again.shows(FIRST);
    again.press('1 \r');
    await again.until('a later question', () => {
      const text = again.text();
      return (
        text.includes('Save and stop') &&
        ![FIRST, NAME, PEOPLE].some((asked) => text.includes(asked))
      );
    });
  });

  it('leaves on Ctrl+C with 130, the answers kept and the terminal as it was found', async () => {
    const terminal = start();
    await atPeople(terminal);
    terminal.press('12\x03');
    expect((await terminal.ended()).exitCode).toBe(130);
    expect(existsSync(join(terminal.folder, 'oak-lane.home.yaml'))).toBe(true);
    await terminal.shows('Stopped.');
    // The cursor is shown again, and no mode we set is left on.
    const raw = terminal.raw();
    expect(raw.lastIndexOf('\x1b[?25h')).toBeGreaterThan(raw.lastIndexOf('\x1b[?25l'));
    expect(raw.lastIndexOf('\x1b[?2004l')).toBeGreaterThan(raw.lastIndexOf('\x1b[?2004h'));
  });

  it('shows the act-now words before anything else when something is wrong', async () => {
    const terminal = start();
    await terminal.shows(FIRST);
    terminal.press('4 \r');
    await terminal.shows('Leave now and take everyone with you.');
    expect(terminal.text()).not.toContain(NAME);
  });

  it('draws no color with NO_COLOR, and asks line by line where CI is set', async () => {
    const plain = start([], { env: { NO_COLOR: '1' } });
    await plain.shows(FIRST);
    expect(plain.raw()).not.toMatch(/\x1b\[(3|4|9)\d/);
    const lines = start([], { env: { CI: '1' } });
    await lines.shows(FIRST);
    expect(lines.text()).not.toContain('Ctrl+S save and stop');
  });
});
