import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { smallTerminals } from './small-terminals';

const { sit } = smallTerminals('small-plan-program.ts', 'Backup power plan: oak');

describe('what if over the plan, through a pseudo-terminal', () => {
  it('moves with Left and Right, and keys never wait for the figures', async () => {
    const terminal = await sit();
    terminal.press('w');
    await terminal.shows('Working out the figures');
    // Each key shows at once what it moved, long before its figures are there.
    terminal.press('\x1b[C');
    await terminal.shows('(now 24 h)');
    expect(terminal.text()).not.toContain('$360.');
    terminal.press('\x1b[C\x1b[C');
    await terminal.shows('$720.');
    await terminal.shows('Nothing is written.');
    expect(terminal.scrolledOff()).toBe(0);
  });

  it('fits 40 columns, before and after a window is made narrow', async () => {
    const terminal = await sit();
    terminal.press('w\x1b[C');
    await terminal.shows('What if: oak');
    terminal.press('\x1b[C');
    terminal.resize({ columns: 40, rows: 24 });
    await terminal.shows('  What if: $');
    expect(Math.max(...terminal.lines().map((line) => line.length))).toBeLessThanOrEqual(40);
    await terminal.shows('Esc plan');
  });

  it('Esc is the plan again where it was left, and Enter leads to the question', async () => {
    const terminal = await sit();
    terminal.press('\x1b[C\x1b[C');
    await terminal.shows('Part 2: plan for oak');
    terminal.press('w');
    await terminal.shows('What if: oak');
    terminal.press('\x1b');
    await terminal.shows('Part 2: plan for oak');
    terminal.press('w');
    await terminal.shows('What if: oak');
    terminal.press('\r');
    await terminal.shows('Nothing is moved yet.');
    terminal.press('\x1b[C');
    await terminal.shows('(now 24 h)');
    terminal.press('\r');
    await terminal.ended();
    const left = JSON.parse(readFileSync(join(terminal.folder, 'left.json'), 'utf8'));
    expect(left).toEqual({ ask: ['goal-hours'], tried: { 'goal-hours': '36 h' } });
  });
});
