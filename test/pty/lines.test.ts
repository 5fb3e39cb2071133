import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { terminalsOf } from './terminals-of';

const program = fileURLToPath(new URL('../../src/bin/lampkeeper.mjs', import.meta.url));
const start = terminalsOf(() => program, 'Is anything dangerous');
const PEOPLE = 'Is anyone at home more at risk';

describe('line by line, in a terminal', () => {
  it('takes no line for a question that was not asked yet, and says so', async () => {
    const terminal = await start({ args: ['--plain'] });
    // The name, who lives here and their devices come next for everybody; what follows a device does not.
    terminal.press('9\roak\r6\r13\r1\r1\r1\r1\r1\r');
    await terminal.shows('Error: Lines typed before this was asked were not used.');
    expect(terminal.text()).toContain('more to a first plan');
    terminal.press('stop\r');
    await terminal.ended();
    const kept = readFileSync(join(terminal.folder, 'oak.home.yaml'), 'utf8');
    expect(kept).toMatch(/medical-devices:\s+- none/);
    expect(kept).not.toMatch(/home-zip|home-kind/);
  });

  it('answers nothing by thirty Enters', async () => {
    const terminal = await start({ args: ['--plain'] });
    terminal.press('9\r');
    await terminal.shows('What short name');
    terminal.press('oak\r');
    await terminal.shows(PEOPLE);
    terminal.press('\r'.repeat(30));
    await terminal.shows('Error: Type the number of a line');
    terminal.press('stop\r');
    await terminal.ended();
    expect(terminal.text()).toContain('oak.home.yaml');
  });
});
