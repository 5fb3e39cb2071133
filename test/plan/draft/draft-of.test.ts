import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { showDraft } from '../../../src/commands/talk/show-draft';
import { rankWords, widthWords } from '../../../src/faces/draft-words';
import { NOT_SURE } from '../../../src/interview/answers';
import { draftMaker } from '../../../src/plan/draft/draft-of';
import { sayLoadName } from '../../../src/words/en/loads/say-load-name';
import { answersOf } from '../../households/read-household';

describe('beside the question', () => {
  const draftOf = draftMaker(interview);

  test('two answers that cannot both be right are asked about once both are given', () => {
    const only = draftOf({ 'main-amps': 200 });
    expect(only.toSettle).toEqual([]);
    const both = draftOf({ 'main-amps': 200, 'panel-bus': 125 });
    expect(both.toSettle).toMatchObject([{ id: 'main-over-bus', mainAmps: 200, busAmps: 125 }]);
    const [said] = showDraft(both).lines;
    expect(said).toContain('Two answers do not fit together. The main breaker is 200 A.');
    expect(said).toContain('125 A');
  });

  test('heat that the building makes for everyone is no load of this home', () => {
    const loads = (heat: string) =>
      draftOf({ 'home-kind': 'apartment', 'heat-main': heat }).loads.map((load) =>
        sayLoadName(load.called),
      );
    expect(loads('boiler')).toContain('Boiler');
    expect(loads('building')).not.toContain('Boiler');
    expect(loads('building')).toEqual(loads('none'));
  });

  test('a well pump counts as soon as the well is told, before its strength is asked', () => {
    for (const source of ['well', 'shallow-pump']) {
      const { loads } = draftOf({ 'home-kind': 'house', 'water-source': source });
      expect(loads.map((load) => load.id)).toContain('well');
    }
  });

  test('nothing is asked where nothing is told', () => {
    expect(draftOf({}).toSettle).toEqual([]);
  });
});

describe('what nobody told, beside the question', () => {
  const draftOf = draftMaker(interview);
  const allUnsure = Object.fromEntries(interview.questions.map(({ id }) => [id, NOT_SURE]));

  test('is never called what must keep running: it counts until it is told', () => {
    const words = rankWords(showDraft(draftOf(allUnsure)));
    expect(words.join(' ')).not.toMatch(/Must keep running|Good to have|Can wait/);
    expect(words).toEqual([expect.stringMatching(/^Counted until you tell us: .*Furnace/)]);
  });

  test('is left out where it does not count', () => {
    const words = rankWords(
      showDraft(draftOf({ 'must-run': ['fridge'], 'home-kind': 'apartment' })),
    );
    // These stood on the list of what must run and were not ticked; nothing is taken to be wished for beyond it.
    expect(words).toEqual([
      'Must keep running: Refrigerator',
      'Can wait: Lights, Phones, Microwave oven',
    ]);
  });

  test('a kind of heater nobody is sure of counts, and is not said to be there', () => {
    const words = rankWords(showDraft(draftOf({ 'must-run': ['heat'], 'heat-main': NOT_SURE })));
    expect(words).toEqual([
      'Can wait: Lights, Phones, Microwave oven',
      'Counted until you tell us: Furnace',
    ]);
  });

  test('what was told keeps its rank', () => {
    const words = rankWords(showDraft(draftOf(answersOf('birch-street'))));
    expect(words[0]).toMatch(/^Must keep running: Furnace, Sump pump, Refrigerator/);
    expect(words.join(' ')).not.toContain('Counted until');
  });

  test('the width is said in kWh, never in percent of what has a range already', () => {
    for (const answers of [allUnsure, { 'must-run': NOT_SURE }, { 'heat-main': NOT_SURE }])
      expect(widthWords(draftOf(answers))).not.toContain('%');
    expect(widthWords(draftOf(allUnsure))).toMatch(/as low as [\d.]+ kWh or as high as [\d.]+ kWh/);
  });
});
