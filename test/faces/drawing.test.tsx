import { render } from 'ink-testing-library';
import { expect, test } from 'vitest';
import { Drawing } from '../../src/faces/screen/drawing';
import { frameOf } from '../../src/faces/screen/frame-of';
import { glyphsFor } from '../../src/faces/screen/glyphs';
import { begin, show } from '../../src/interview/begin';
import { smallInterview } from './small-interview';

const context = {
  interview: smallInterview,
  short: false,
  nameProblem: () => null,
  spareName: () => 'home-1',
};

test('a question is drawn with its typed text, its unit and its rows', () => {
  const start = begin(context, { 'home-name': 'kim', 'water-source': 'well', 'well-watts': 1500 });
  const state = show(context, start, 'well-watts');
  const frame = frameOf({
    context,
    state,
    draft: null,
    size: { columns: 80, rows: 24 },
    glyphs: glyphsFor({}),
  });
  const shown = render(<Drawing frame={frame} />).lastFrame() ?? '';
  expect(shown).toContain('How many watts does the well pump use?');
  expect(shown).toContain('1500 W');
  expect(shown).toContain('watts');
  expect(shown).toContain("I'm not sure");
});

test('the colors of the plan are colors, and nothing else in it is obeyed', () => {
  const line = [{ text: '\x1b[1mThe plan\x1b[22m of \x1b]0;kim\x07\x1b[2J', painted: true }];
  const frame = { lines: [line], cursor: null, maxScroll: 0, page: 1 };
  const shown = render(<Drawing frame={frame} />).lastFrame() ?? '';
  expect(shown).toContain('The plan');
  expect(shown).not.toMatch(/\ufffd\[1m/);
  expect(shown).toContain('\ufffd]0;kim\ufffd\ufffd[2J');
  const plain = render(
    <Drawing frame={{ ...frame, lines: [[{ text: '\x1b[1mtyped' }]] }} />,
  ).lastFrame();
  expect(plain).toContain('\ufffd[1mtyped');
});
