import { describe, expect, test } from 'vitest';
import interview from '#compiled/questions.js';
import { weigher } from '../../src/plan/weigh';

describe('beside the question', () => {
  const weigh = weigher(interview);

  test('two answers that cannot both be right are asked about once both are given', () => {
    const only = weigh({ 'main-amps': 200 });
    expect(only.lines.join(' ')).not.toContain('do not fit together');
    const both = weigh({ 'main-amps': 200, 'panel-bus': 125 });
    expect(both.lines.join(' ')).toContain('Two answers do not fit together.');
    expect(both.lines.join(' ')).toContain('200 A');
    expect(both.lines.join(' ')).toContain('125 A');
  });

  test('heat that the building makes for everyone is no load of this home', () => {
    const loads = (heat: string) =>
      weigh({ 'home-kind': 'apartment', 'heat-main': heat }).loads.map((load) => load.name);
    expect(loads('boiler')).toContain('Boiler');
    expect(loads('building')).not.toContain('Boiler');
    expect(loads('building')).toEqual(loads('none'));
  });

  test('nothing is asked where nothing is told', () => {
    expect(weigh({}).lines).toEqual([]);
  });
});
