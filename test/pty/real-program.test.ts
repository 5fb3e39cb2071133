import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { WELCOME_TITLE } from '../../src/faces/welcome-words';
import { PROGRAM } from '../fixtures/program';
import { lightsOnly } from '../fixtures/quick-homes';
import { terminalsOf } from './terminals-of';

const FIRST = 'Is anything dangerous at home right now?';
const NAME = 'What short name';
const HOURS = 'How long do you want';

const start = terminalsOf(() => PROGRAM, FIRST);

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

describe('the program itself, through a pseudo-terminal', () => {
  // One home through five sittings, for each start takes half a second: what the one left is what the next finds.
  it('keeps each answer and what was begun through Ctrl+C, a closed terminal and a kill, lets a second window only look, and goes on where it stopped with what would change the plan most, the same line by line', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
    const path = join(folder, 'oak-lane.home.yaml');
    writeFileSync(path, OPENED);
    const kept = () => readFileSync(path, 'utf8');
    const sitDown = () => start({ args: ['oak-lane.home.yaml'], folder });

    // A number begun before Ctrl+C is shown again, and asks for Enter.
    const first = await sitDown();
    first.press('9 \r');
    await first.shows(HOURS);
    first.press('12');
    await first.shows('[ 12 ');
    first.press('\x03');
    expect((await first.ended()).exitCode).toBe(130);
    await first.shows('Stopped.');
    // The cursor is shown again, and no mode we set is left on.
    const raw = first.raw();
    expect(raw.lastIndexOf('\x1b[?25h')).toBeGreaterThan(raw.lastIndexOf('\x1b[?25l'));
    expect(raw.lastIndexOf('\x1b[?2004l')).toBeGreaterThan(raw.lastIndexOf('\x1b[?2004h'));
    expect(kept()).toMatch(/unfinished:\n {2}goal-hours: "12"/);
    expect(kept().match(/goal-hours/g)).toHaveLength(1);

    const second = await sitDown();
    const beside = await sitDown();
    await beside.shows('This home is open in another window');
    beside.press('\x03');
    await beside.ended();
    // Danger is asked afresh at every sitting.
    second.press('9 \r');
    await second.shows('[ 12 ');
    await second.shows('You began this before');

    // And one begun before the end of its terminal.
    second.press('3');
    await second.shows('[ 123 ');
    second.kill('SIGHUP');
    await second.ended();
    expect(kept()).toMatch(/unfinished:\n {2}goal-hours: "123"/);
    expect(kept().match(/goal-hours/g)).toHaveLength(1);
    // By the name of the home alone; the welcome is not shown again.
    const third = await start({ args: ['oak-lane'], folder });
    expect(third.raw()).not.toContain(WELCOME_TITLE);
    third.press('9 \r');
    await third.shows('[ 123 ');
    await third.shows('You began this before');

    // The next step stands on the screen: what was answered before it is on the disk.
    third.press('\x154\r');
    await third.hides(HOURS);
    third.kill('SIGKILL');
    await third.ended();
    expect(kept()).toMatch(/goal-hours: 4/);
    expect(existsSync(join(folder, '.oak-lane.home.yaml.open'))).toBe(true);
    // As if it had been killed in the middle of a later answer.
    writeFileSync(`${path}.new-${third.pid}`, 'half');

    // The next start goes on, and cleans up.
    const fourth = await sitDown();
    expect(fourth.text()).not.toContain('another window');
    fourth.press('9 \r');
    await fourth.shows('Why now: ');
    await fourth.shows('Your plan so far');
    await fourth.shows('Save and stop');
    for (const asked of [FIRST, NAME, HOURS]) expect(fourth.text()).not.toContain(asked);
    const asked = fourth.lines().find((line) => line.includes('?'))!;
    fourth.press('\x13');
    expect((await fourth.ended()).exitCode).toBe(0);
    await fourth.shows('To go on: lampkeeper oak-lane.home.yaml');
    expect(kept()).toMatch(/goal-hours: 4/);
    expect(readdirSync(folder).filter((name) => name.includes('oak'))).toEqual([
      'oak-lane.home.yaml',
    ]);

    // Where CI is set it asks line by line, and the same.
    const lines = await start({ args: ['oak-lane.home.yaml'], folder, env: { CI: '1' } });
    expect(lines.text()).not.toContain('Ctrl+S save and stop');
    lines.press('9\r');
    await lines.shows('Is that right?');
    lines.press('yes\r');
    await lines.shows('Why now: ');
    expect(lines.text()).toContain(asked.trim());
  });

  it('shows the act-now words before anything else, prints them once more after leaving, keeps what was told, and draws no color with NO_COLOR', async () => {
    const terminal = await start({ env: { NO_COLOR: '1' } });
    terminal.press('2 \r');
    await terminal.shows('Leave now, and take everyone with you');
    expect(terminal.text()).not.toContain(NAME);
    await terminal.shows('> Read this first');
    terminal.press('\x1b[B\r');
    expect((await terminal.ended()).exitCode).toBe(0);
    await terminal.shows('To go on: lampkeeper my-home.home.yaml');
    await terminal.shows('Leave now, and take everyone with you');
    expect(terminal.raw()).not.toMatch(/\x1b\[(3|4|9)\d/);
    const kept = readFileSync(join(terminal.folder, 'my-home.home.yaml'), 'utf8');
    expect(kept).toMatch(/now-danger:\s+- gas-smell/);
  });

  it('leads from the plan to the homes of the folder, and to another home from there', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'lampkeeper-pty-'));
    // With a place that is read back.
    writeFileSync(
      join(folder, 'kim.home.yaml'),
      lightsOnly('kim', { 'engine-place': 'open-20ft' }),
    );
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
});
