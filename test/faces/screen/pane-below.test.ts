import { expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { showDraft } from '../../../src/commands/talk/show-draft';
import { frameOf } from '../../../src/faces/screen/frame-of';
import { glyphsFor } from '../../../src/faces/screen/glyphs';
import { begin, show } from '../../../src/interview/begin';
import { relevant } from '../../../src/interview/questions/relevant';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { answersOf } from '../../households/read-household';
import { context as talk } from '../every-view';

/** The plan so far of a home, as if it carried neither heat nor cold food. */
const told = answersOf('birch-street');
const whole = showDraft(draftMaker(interview)(told));
const route = { ...whole.glance.route!, leavesOut: ['Furnace', 'Refrigerator'] };
const draft = { ...whole, glance: { ...whole.glance, route } };
const glyphs = glyphsFor({ LANG: 'C.UTF-8' });
const context = { ...talk, guided: true, short: false };

/** Questions of this home after the opening, each as it stands on the screen. */
function screens(columns: number, rows: number): Map<string, string> {
  const asked = relevant(context, told).filter(({ id }) => !interview.opening.includes(id));
  const first = begin(context, {});
  return new Map(
    asked.map(({ id }) => {
      const state = show(context, { ...first, answers: told }, id);
      const changed = 'Now with one freezer more: $1,770 to $2,070, and 4 h less.';
      const frame = frameOf({ context, state, draft, changed, size: { columns, rows }, glyphs });
      return [id, frame.lines.map((line) => line.map(({ text }) => text).join('')).join('\n')];
    }),
  );
}

const without = (shown: Map<string, string>) =>
  [...shown].filter(([, text]) => !text.includes('It leaves out: furnace')).map(([id]) => id);

test('what the plan so far leaves out is seen below every question of an 80 by 24 window', () => {
  const shown = screens(80, 24);
  expect(shown.size).toBeGreaterThan(40);
  expect(without(shown)).toEqual([]);
  // Nothing is cut off the price for want of a line below it.
  for (const [id, text] of shown) expect(text, id).not.toMatch(/About \$[^.]*…/);
});

test('and below most of a narrow one, where what is asked needs the lines', () => {
  const shown = screens(40, 24);
  expect(without(shown).length).toBeLessThan(shown.size / 2);
  for (const [id, text] of shown) expect(text, id).not.toMatch(/It leaves out: \w*…/);
});
