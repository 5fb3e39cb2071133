import { describe, expect, test } from 'vitest';
import { planMarkdown } from '../../src/papers/household/to-markdown';
import { equipmentCost } from '../../src/tables/prices/equipment-costs';
import { english } from '../../src/words/en';
import { loadNames } from '../../src/words/en/load-names';
import { sayIf } from '../../src/words/en/routes/say-if';
import { sayNote } from '../../src/words/en/routes/say-note';
import { planOf } from '../households/read-household';

const birch = planOf('birch-street');
const mill = planOf('mill-lane');
const section = (text: string, title: string) => text.split(`\n## ${title}`)[1]!.split('\n## ')[0]!;

describe('an engine run by a timetable', () => {
  const notes = (changed = {}) =>
    planOf('birch-street', changed).advice.route.notes.map(sayNote).join('\n');

  test('says which of the loads it carries stand still between the hours', () => {
    const still = /these stand still: ([^.]*)\./m.exec(
      birch.advice.route.notes.map(sayNote).join('\n'),
    )![1]!;
    expect(still.split(', ').sort()).toEqual(
      loadNames(
        birch.home,
        birch.advice.route.carries.filter((id) => id !== 'phone-charging'),
      ).sort(),
    );
  });

  test('warns that water rises, or that the pump hangs on its own battery', () => {
    expect(notes()).toContain('Caution: water rises while the sump pump stands still');
    expect(notes({ sump: 'one-with-battery' })).toContain('hangs on its own battery');
  });

  test('is never for a medical device', () => {
    expect(notes({ 'medical-devices': ['oxygen-concentrator'] })).toMatch(
      /Caution: never .* for the Oxygen concentrator/,
    );
    expect(notes()).not.toContain('Caution: never');
  });
});

describe('the sump pump with a battery of its own', () => {
  test('is priced wherever it is advised, and apart from the route', () => {
    const { low, likely, high, year, standing } = equipmentCost('sump-battery');
    expect(standing).toBe('memory');
    expect(birch.addOns).toMatchObject([
      { id: 'sump-battery', usdLow: low, usdLikely: likely, usdHigh: high, year },
    ]);
    expect(planMarkdown(birch, english)).toContain(
      `${english.part({ code: 'sump-battery' })}: $${likely} ($${low} to $${high.toLocaleString('en-US')})`,
    );
    expect(birch.advice.route.parts.map(({ equipmentClass }) => equipmentClass)).not.toContain(
      'sump-battery',
    );
  });

  test('costs the same as the route that is nothing else, in the routes and in the money table', () => {
    const { low, likely, high } = equipmentCost('sump-battery');
    const single = birch.routes.find((route) => route.kind === 'single-battery')!;
    expect(single.carries).toEqual(['sump']);
    expect(single.costUsd).toMatchObject({ low, value: likely, high });
    const money = birch.money.routes.find((route) => route.kind === 'single-battery')!;
    expect(money.money.firstCost).toMatchObject({ low, high });
  });

  test('is not sold to a home that has one or has no pump', () => {
    expect(planOf('birch-street', { sump: 'one-with-battery' }).addOns).toEqual([]);
    expect(planOf('ridge-road').addOns).toEqual([]);
  });
});

describe('alarms in the next steps', () => {
  const step = (changed = {}) => {
    const { nextSteps, home } = planOf('mill-lane', changed);
    return nextSteps.map((one) => english.step(one, home)).join('\n');
  };
  test('are tested where they hang, bought where they are missing', () => {
    expect(step()).toContain('Test the carbon monoxide alarms you have');
    expect(step({ 'co-alarm': 'some' })).toContain(
      'Buy and place the carbon monoxide alarms that are missing',
    );
    for (const answer of ['none', 'not sure'])
      expect(step({ 'co-alarm': answer })).toContain('Buy and place carbon monoxide alarms');
  });
});

describe('what one part of the plan says', () => {
  test('of answers to settle, the others know', () => {
    // Of equipment that nobody buys here: worth settling, and no first step.
    const spare = planMarkdown(birch, english);
    expect(section(spare, 'Worth finding out')).toContain(
      'Worth settling if you ever want a battery fixed to the house',
    );
    expect(section(spare, 'Next steps')).not.toContain(english.household.headings.settleAbove);
    // Of the home itself: a main breaker above what its bus carries.
    const changed = { 'panel-bus': 100, 'battery-place': 'attached-garage' };
    const text = planMarkdown(planOf('birch-street', changed), english);
    expect(text).toContain('## Settle these first');
    expect(section(text, 'Worth finding out')).not.toContain('if you ever want');
    expect(section(text, 'Next steps')).toContain(english.household.headings.settleAbove);
    expect(section(planMarkdown(mill, english), 'Worth finding out')).not.toContain('Settle');
  });

  test('of the bill, the figures bear: fits only inside the range of the loads', () => {
    const { billCheck } = birch;
    if (billCheck.verdict === 'not-possible') throw new Error('a bill was given');
    expect(billCheck.billKwhPerDay.value).toBeGreaterThan(billCheck.loadsKwhPerDay.high);
    expect(english.billCheck(billCheck)).not.toContain('fit together');
    expect(english.billCheck(billCheck)).toContain('above even the high end');
    expect(planMarkdown(birch, english)).toContain('not only what must run on a hard one');
    expect(planMarkdown(mill, english)).toContain('They fit together');
  });

  test('of cords: what they carry has a plug, and what is wired in stays dark', () => {
    expect(mill.advice.route.kind).toBe('engine-cords');
    expect(mill.advice.route.carries).toEqual(expect.arrayContaining(['sump', 'lights-led']));
    const wont = mill.willNotDo.map((one) => english.willNotDo(one, mill.home)).join('\n');
    expect(wont).not.toMatch(/no outlet, light or pump of the house/);
    expect(wont).toContain('no ceiling light');
    expect(wont).toContain(
      'Light comes from lamps with a plug. The sump pump runs by its own plug.',
    );
    expect(mill.advice.route.ifs.map(sayIf).join('\n')).toMatch(
      /sump pump has a plug.*\n.*lamps with a plug/,
    );
  });

  test('of the loads, the counts can be followed: seven that must run, one more that is good to have', () => {
    const text = planMarkdown(birch, english);
    expect(text).toContain('It carries all 7 that must keep running:');
    expect(text).toContain('Good to have, it also carries: Microwave oven.');
    expect(section(text, 'Where a licensed')).toContain(
      'and of what is good to have: Microwave oven',
    );
  });

  test('of the hardest start, job and figures name the same motors', () => {
    const text = planMarkdown(birch, english);
    expect(section(text, 'The job')).toContain(
      'when the sump pump and the refrigerator start together',
    );
    expect(section(text, 'For the electrician')).toContain('Sump pump and Refrigerator together');
  });

  test('of the electrician: none is needed where nothing is wired, and what would need one', () => {
    const said = section(planMarkdown(mill, english), 'Where a licensed');
    expect(said).toContain('No work in this plan needs a licensed electrician');
    expect(said).toContain('any wire fixed to the house');
    expect(section(planMarkdown(birch, english), 'Where a licensed')).not.toContain('No work');
  });

  test('of a wire: amps, volts and length beside the drop, the column beside the size', () => {
    const run = birch.electrical.wires.find((one) => one.run === 'inlet-to-panel')!;
    // 12 ft of 10 AWG copper at 1.21 ohm per 1,000 ft (NEC chapter 9, table 8): 2 x 12 x 1.21/1000 x A / 240 V.
    const copper = run.sizes.find((size) => size.metal === 'copper' && size.columnC === 60)!;
    expect(copper.size).toBe('10');
    expect(copper.dropPercent).toBeCloseTo((100 * 2 * 12 * (1.21 / 1000) * run.loadAmps) / 240, 2);
    expect(section(planMarkdown(birch, english), 'For the electrician')).toContain(
      'planning size 10 AWG copper by the 60 °C column; at 14.6 A, 240 V and 12 ft one way',
    );
  });
});

describe('words', () => {
  test.each(['birch-street', 'mill-lane', 'ridge-road', 'tower-six'])('of %s', (name) => {
    const text = planMarkdown(planOf(name), english);
    expect(text).not.toMatch(/points below|Money back, told by|Quote for:|What is always on/);
    expect(text).not.toMatch(/\bkm\b|\d m (lower|higher)|\d [CF]\b/);
    expect(section(text, 'How sure this is')).not.toMatch(/\d\.\d+ ?(%|per year)/);
    expect(section(text, 'How sure this is')).toMatch(/\d+ miles? away, .*counted \d+ %/);
  });
});
