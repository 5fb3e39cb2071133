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
