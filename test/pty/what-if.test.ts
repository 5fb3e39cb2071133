import { readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { bundleSmall } from './bundle-small';
import { terminalsOf } from './terminals-of';

let program = '';
beforeAll(async () => {
  program = await bundleSmall('small-plan-program.ts');
});
afterAll(() => rmSync(dirname(program), { recursive: true, force: true }));
const start = terminalsOf(() => program, 'Backup power plan: oak');

describe('what if over the plan, through a pseudo-terminal', () => {
  it('moves with Left and Right, and keys never wait for the figures', async () => {
    const terminal = await start({ size: { columns: 80, rows: 24 } });
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
    const terminal = await start({ size: { columns: 80, rows: 24 } });
    terminal.press('w\x1b[C');
    await terminal.shows('What if: oak');
    terminal.press('\x1b[C');
    terminal.resize({ columns: 40, rows: 24 });
    await terminal.shows('  What if: $');
    expect(Math.max(...terminal.lines().map((line) => line.length))).toBeLessThanOrEqual(40);
    await terminal.shows('Esc plan');
  });

  it('Esc is the plan again where it was left, and Enter leads to the question', async () => {
    const terminal = await start({ size: { columns: 80, rows: 24 } });
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
