import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { OpenTerminal } from './open-terminal';
import { terminalsOf } from './terminals-of';

const program = fileURLToPath(new URL('../../src/bin/lampkeeper.mjs', import.meta.url));
const household = fileURLToPath(new URL('../households/mill-lane.home.yaml', import.meta.url));
const FIRST = 'Is anything dangerous at home right now?';
const NAME = 'What short name';
const HOURS = 'How long do you want';

const start = terminalsOf(() => program, FIRST);

/** A home whose opening was answered but for one question, which asks for a number. */
const OPENED = `lampkeeperHome: 1
answers:
  home-name: oak-lane
  people-risk: [none]
  medical-devices: [none]
  home-zip: "48911"
  home-kind: house
  home-tenure: own
  water-source: town
  heat-main: gas-furnace
  must-run: [fridge]
  goal-season: winter
  engine-place: none
  budget-now: $500
`;

async function atHours(): Promise<OpenTerminal> {
  const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
  writeFileSync(join(folder, 'oak-lane.home.yaml'), OPENED);
  const terminal = await start({ args: ['oak-lane.home.yaml'], folder });
  terminal.press('9 \r');
  await terminal.shows(HOURS);
  return terminal;
}

describe('the program itself, through a pseudo-terminal', () => {
  it('keeps each answer in the home file, lets a second window only look, and goes on where it stopped', async () => {
    const first = await atHours();
    const second = await start({ args: ['oak-lane.home.yaml'], folder: first.folder });
    await second.shows('This home is open in another window');
    second.press('\x03');
    await second.ended();
    first.press('4\r');
    await first.hides(HOURS);
    expect(readFileSync(join(first.folder, 'oak-lane.home.yaml'), 'utf8')).toMatch(/goal-hours: 4/);
    first.press('\x13');
    expect((await first.ended()).exitCode).toBe(0);
    await first.shows('To go on: lampkeeper oak-lane.home.yaml');
    const kept = readFileSync(join(first.folder, 'oak-lane.home.yaml'), 'utf8');
    expect(kept).toMatch(/goal-hours: 4/);

    // Danger is asked afresh at every sitting.
    const again = await start({ args: ['oak-lane.home.yaml'], folder: first.folder });
    again.press('9 \r');
    await again.until('a later question', () => {
      const text = again.text();
      return (
        text.includes('Save and stop') &&
        ![FIRST, NAME, HOURS].some((asked) => text.includes(asked))
      );
    });
  });

  it('shows the act-now words before anything else, prints them once more after leaving, and keeps what was told', async () => {
    const terminal = await start();
    terminal.press('2 \r');
    await terminal.shows('Leave now, and take everyone with you');
    expect(terminal.text()).not.toContain(NAME);
    await terminal.shows('> Read this first');
    terminal.press('\x1b[B\r');
    expect((await terminal.ended()).exitCode).toBe(0);
    await terminal.shows('To go on: lampkeeper my-home.home.yaml');
    await terminal.shows('Leave now, and take everyone with you');
    const kept = readFileSync(join(terminal.folder, 'my-home.home.yaml'), 'utf8');
    expect(kept).toMatch(/now-danger:\s+- gas-smell/);
  });

  it.each([
    ['Ctrl+C', 130, (terminal: OpenTerminal) => terminal.press('\x03')],
    ['the end of its terminal', null, (terminal: OpenTerminal) => terminal.kill('SIGHUP')],
  ])('shows a number begun before %s again, and asks for Enter', async (_, code, leave) => {
    const first = await atHours();
    first.press('12');
    await first.shows('[ 12 ');
    leave(first);
    const { exitCode } = await first.ended();
    if (code !== null) {
      expect(exitCode).toBe(code);
      await first.shows('Stopped.');
      // The cursor is shown again, and no mode we set is left on.
      const raw = first.raw();
      expect(raw.lastIndexOf('\x1b[?25h')).toBeGreaterThan(raw.lastIndexOf('\x1b[?25l'));
      expect(raw.lastIndexOf('\x1b[?2004l')).toBeGreaterThan(raw.lastIndexOf('\x1b[?2004h'));
    }
    const kept = readFileSync(join(first.folder, 'oak-lane.home.yaml'), 'utf8');
    expect(kept).toMatch(/unfinished:\n {2}goal-hours: "12"/);
    expect(kept.match(/goal-hours/g)).toHaveLength(1);
    const again = await start({ args: ['oak-lane.home.yaml'], folder: first.folder });
    again.press('9 \r');
    await again.shows('[ 12 ');
    await again.shows('You began this before');
  });

  it('has every answer on the disk when it is killed, and cleans up at the next start', async () => {
    const first = await atHours();
    first.press('4\r');
    await first.hides(HOURS);
    // The next question stands on the screen: what was answered before it is on the disk.
    first.kill('SIGKILL');
    await first.ended();
    const { folder } = first;
    const path = join(folder, 'oak-lane.home.yaml');
    expect(readFileSync(path, 'utf8')).toMatch(/goal-hours: 4/);
    expect(existsSync(join(folder, '.oak-lane.home.yaml.open'))).toBe(true);
    // As if it had been killed in the middle of a later answer.
    writeFileSync(`${path}.new-${first.pid}`, 'half');
    const again = await start({ args: ['oak-lane.home.yaml'], folder });
    expect(again.text()).not.toContain('another window');
    again.press('\x03');
    expect((await again.ended()).exitCode).toBe(130);
    expect(readdirSync(folder).filter((name) => name.includes('oak'))).toEqual([
      'oak-lane.home.yaml',
    ]);
  });

  it('asks after the opening what would change the plan most, the same on the screen and line by line', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
    writeFileSync(join(folder, 'oak-lane.home.yaml'), `${OPENED}  goal-hours: 24 h\n`);
    const again = await start({ args: ['oak-lane.home.yaml'], folder });
    again.press('9 \r');
    await again.shows('Why now: ');
    await again.shows('Your plan so far');
    const asked = again.lines().find((line) => line.includes('?'))!;
    again.press('\x03');
    await again.ended();
    const lines = await start({ args: ['--plain', 'oak-lane.home.yaml'], folder });
    lines.press('9\r');
    await lines.shows('Is that right?');
    lines.press('yes\r');
    await lines.shows('Why now: ');
    expect(lines.text()).toContain(asked.trim());
  });

  it('leads from the plan to the homes of the folder, and to another home from there', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
    copyFileSync(household, join(folder, 'kim.home.yaml'));
    const terminal = await start({ args: ['--change', 'kim.home.yaml'], folder });
    // The first line of the list writes the plan.
    terminal.press('9 \r');
    await terminal.shows('Check your answers');
    terminal.press('\x1b[B\r\r\r');
    // The place told for a generator is read back; Enter alone does not confirm it.
    await terminal.shows('is all of this so?');
    terminal.press('\x1b[B\r\r\r');
    await terminal.shows('N homes');
    // It asks first. Enter chooses nothing unseen, and Esc comes back.
    for (const key of ['\x1b', '\r', 'n']) {
      terminal.press('n');
      await terminal.shows('Y go there');
      terminal.press(key);
      await terminal.shows('N homes');
    }
    terminal.press('N');
    await terminal.shows('Y go there');
    terminal.press('y');
    await terminal.shows('its plan is written');
    terminal.press('2\r');
    await terminal.shows(FIRST);
    terminal.press('9 \r');
    await terminal.shows(NAME);
    expect(existsSync(join(folder, 'kim.plan.md'))).toBe(true);
  });

  it('draws no color with NO_COLOR, and asks line by line where CI is set', async () => {
    const plain = await start({ env: { NO_COLOR: '1' } });
    expect(plain.raw()).not.toMatch(/\x1b\[(3|4|9)\d/);
    const lines = await start({ env: { CI: '1' } });
    expect(lines.text()).not.toContain('Ctrl+S save and stop');
  });
});
