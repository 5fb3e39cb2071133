import { describe, expect, test } from 'vitest';
import { planFrame } from '../../../src/faces/screen/plan-frame';
import { planKey } from '../../../src/faces/screen/plan-keys';
import type { Key } from '../../../src/interview/key';

const text = (one: string): Key => ({ name: 'text', text: one });
const named = (name: Exclude<Key['name'], 'text'>): Key => ({ name });

describe('a key over the plan', () => {
  test('N asks before a new home is begun, and only Y begins it', () => {
    expect(planKey(text('n'), false, 10)).toBe('ask-next');
    expect(planKey(text('y'), true, 10)).toBe('next');
    for (const key of [named('escape'), named('enter'), text('n'), text(' '), named('down')]) {
      expect(planKey(key, true, 10)).toBe('stay');
    }
  });

  test('a paste that holds the letter asks nothing', () => {
    expect(planKey({ name: 'text', text: 'n', pasted: true }, false, 10)).toEqual({ scroll: 0 });
  });

  test('Enter, Esc and Q leave; the rest scrolls', () => {
    for (const key of [named('enter'), named('escape'), text('q'), named('ctrl-c')]) {
      expect(planKey(key, false, 10)).toBe('leave');
    }
    expect(planKey(named('page-down'), false, 10)).toEqual({ scroll: 10 });
    expect(planKey(text(' '), false, 10)).toEqual({ scroll: 10 });
  });

  test('the question stands at the foot, the plan above it', () => {
    const frame = planFrame(['a plan'], { columns: 40, rows: 24 }, { scroll: 0, asking: true });
    const all = frame.lines.map((line) => line.map((span) => span.text).join('')).join('\n');
    expect(all).toMatch(/a plan/);
    expect(all).toMatch(/Leave this plan and begin\s+with another home\?/);
    expect(all).toMatch(/Y begin\s+Esc back to it/);
  });
});
