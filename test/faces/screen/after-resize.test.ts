import { expect, test } from 'vitest';
import { afterResize, eventFor } from '../../../src/faces/screen/event-for';
import { frameOf } from '../../../src/faces/screen/frame-of';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import { NO_ROW } from '../../../src/interview/keys/no-row';
import type { State } from '../../../src/interview/state';
import { context, views } from '../every-view';

const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
const wide = { columns: 80, rows: 24 };
const narrow = { columns: 30, rows: 12 };
const frame = (state: State, size: typeof wide) =>
  frameOf({ context, state, draft: null, changed: null, size, glyphs });
const texts = views.filter(([name]) => ['tonight', 'act-now'].includes(name));
const enter = { name: 'enter' } as const;

test.each(texts)(
  'a line that was marked below %s is chosen after the window became smaller',
  (_, state) => {
    const before = frame(state, wide);
    const marked = { ...state, row: 1, scroll: before.maxScroll };
    const after = afterResize(context, marked, before);
    const then = frame(after, narrow);
    expect(then.maxScroll).toBeGreaterThan(0);
    expect(eventFor(marked, enter, then)).toMatchObject({ type: 'scroll' });
    expect(eventFor(after, enter, then)).toEqual({ type: 'key', key: enter });
  },
);

test.each(texts)(
  'what was not read to its end, or has no line marked, stays where it was: %s',
  (_, state) => {
    const before = frame(state, narrow);
    for (const one of [
      { ...state, row: NO_ROW, scroll: before.maxScroll },
      { ...state, row: 1, scroll: 0 },
    ])
      expect(afterResize(context, one, before)).toBe(one);
  },
);
