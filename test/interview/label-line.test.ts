import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { printView } from '../../src/faces/lines/print-view';
import { begin, show } from '../../src/interview/begin';
import { readLabel } from '../../src/interview/label-line';
import { reduce } from '../../src/interview/reduce';
import type { Context, State } from '../../src/interview/state';

const read = (text: string, at = 'cool-run-amps') =>
  readLabel(interview.questions, at, text)?.answers ?? null;

describe('a line of a label', () => {
  test.each([
    ['RLA 14.1 LRA 73.0 208/230V 1PH', { 'cool-run-amps': 14.1, 'cool-start-amps': 73 }],
    [
      'COMPRESSOR  208/230 V  60 HZ  1 PH  R.L.A. 14.1  L.R.A. 73',
      { 'cool-run-amps': 14.1, 'cool-start-amps': 73 },
    ],
    ['lra:73', { 'cool-start-amps': 73 }],
    ['RLA=14.1A MCA 18.9 MAX FUSE 30', { 'cool-run-amps': 14.1 }],
  ])('fills every field it holds: %s', (text, answers) => {
    expect(read(text)).toEqual(answers);
    expect(read(text, 'cool-start-amps')).toEqual(answers);
  });

  test('is the label of the machine asked about', () => {
    expect(read('FLA 8.2 LRA 40', 'well-run-amps')).toEqual({
      'well-run-amps': 8.2,
      'well-start-amps': 40,
    });
    expect(read('RLA 14 LRA 70', 'heat-pump-start-amps')).toEqual({
      'heat-pump-run-amps': 14,
      'heat-pump-start-amps': 70,
    });
    expect(read('RLA 14 LRA 70', 'budget-now')).toBeNull();
  });

  test('takes no number without its mark, no wire or fuse size, and nothing impossible', () => {
    for (const text of [
      '14.1',
      'MCA 18.9 MAX FUSE 30',
      'RLA',
      'RLA 9000',
      '208/230V 1PH',
      'about 14',
    ])
      expect({ text, read: read(text) }).toEqual({ text, read: null });
  });

  test('is shown before it counts, and counts only when it is right', () => {
    const context: Context = {
      interview,
      short: false,
      nameProblem: () => null,
      spareName: () => 'kim',
    };
    const answers = { 'home-name': 'kim', 'home-kind': 'house', 'cool-main': 'central' };
    const at: State = show(context, { ...begin(context, answers), answers }, 'cool-run-amps');
    const shown = reduce(context, at, { type: 'typed', text: 'RLA 14.1 LRA 73.0 208/230V 1PH' });
    expect(shown).toMatchObject({ view: 'label', answers });
    expect(printView(context, shown).join('\n')).toMatch(
      /running amps: 14\.1 A[\s\S]*starting amps: 73 A/,
    );
    const enters = Array.from({ length: 30 }).reduce<State>(
      (state) => reduce(context, state, { type: 'key', key: { name: 'enter' } }),
      shown,
    );
    expect(enters).toMatchObject({ view: 'label', answers });
    const yes = reduce(context, shown, { type: 'act', act: 'label' });
    expect(yes.answers).toMatchObject({ 'cool-run-amps': 14.1, 'cool-start-amps': 73 });
    expect(yes.at).not.toBe('cool-run-amps');
    const neighbor = reduce(context, at, { type: 'typed', text: 'LRA 73' });
    const kept = reduce(context, neighbor, { type: 'act', act: 'label' });
    expect(kept).toMatchObject({ view: 'ask', at: 'cool-run-amps', field: { text: '' } });
    expect(kept.answers).toEqual({ ...answers, 'cool-start-amps': 73 });
    const no = reduce(context, shown, { type: 'act', act: 'again' });
    expect(no).toMatchObject({ view: 'ask', at: 'cool-run-amps', answers, label: null });
    expect(no.field.text).toContain('RLA 14.1');
  });
});
