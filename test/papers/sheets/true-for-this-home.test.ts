import { describe, expect, test } from 'vitest';
import { traitsOf } from '../../../src/kinds/route-traits';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { handSteps } from '../../../src/plan/on-the-day/hand-steps';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** Words and names are looked at, no odds: a few drawn years will do. */
const planFor = (name: string) => planOf(name, {}, 5);
const textOf = (name: string, id: string) =>
  sheetToMarkdown(sheetsOf(planFor(name), english).find((sheet) => sheet.id === id)!).replace(
    /\s+/g,
    ' ',
  );

describe('a generator on a line of gas', () => {
  const { home } = planFor('ridge-road');
  const portable = Object.values(traitsOf).filter((one) => one.generator === 'portable');

  test('is filled by nobody: its valve is opened before the start and shut once it stands', () => {
    expect(portable.length).toBeGreaterThan(2);
    for (const traits of portable) {
      const { start, back } = handSteps(traits, home, true);
      expect(start).not.toContain('refuel-cold');
      expect(start.indexOf('gas-on')).toBe(start.indexOf('start-outdoors') - 1);
      expect(start.indexOf('gas-on')).toBeGreaterThan(start.indexOf('alarms-work'));
      expect(back).toContain('generator-and-gas-off');
      expect(back).not.toContain('generator-off');
    }
  });

  test('elsewhere nothing is said of a valve', () => {
    for (const traits of Object.values(traitsOf)) {
      const { start, back } = handSteps(traits, home);
      expect([...start, ...back]).not.toContain('gas-on');
      expect([...start, ...back]).not.toContain('generator-and-gas-off');
    }
  });

  test('and the sheet for the night reads so: a tank in one home, cans in the other', () => {
    expect(planFor('ridge-road').advice.route.fuel!.fuel).toBe('propane');
    expect(textOf('ridge-road', 'fridge')).toContain(english.sheets.handSteps['gas-on']);
    expect(textOf('ridge-road', 'fridge')).not.toContain(english.sheets.handSteps['refuel-cold']);
    expect(textOf('birch-street', 'fridge')).toContain(english.sheets.handSteps['refuel-cold']);
    expect(textOf('birch-street', 'fridge')).not.toContain(english.sheets.handSteps['gas-on']);
  });
});

test('no motor is spoken of where none is carried', () => {
  const plan = planFor('tower-six');
  const carried = plan.home.loads.filter(({ id }) => plan.advice.route.carries.includes(id));
  expect(carried.length).toBeGreaterThan(2);
  expect(textOf('tower-six', 'fridge')).not.toContain('motor');
  expect(textOf('tower-six', 'fridge')).toContain(english.sheets.fridge.noMotor);
});

test('the family is sent to the sheet to quote from, not to a part of another paper', () => {
  const family = textOf('birch-street', 'family');
  expect(family).toContain(`"${english.sheets.quote.title}"`);
  expect(family).not.toContain(english.household.headings.electrician);
});

test('hours of the day are said as people say them', () => {
  expect(textOf('tower-six', 'fridge')).toContain('7 until 8 am and 7 until 9 pm');
});

describe('what has to be found in the dark', () => {
  test.each([
    ['birch-street', english.sheets.fridge.whereNames.source.generator],
    ['orchard-bend', english.sheets.fridge.whereNames.source.battery],
    ['tower-six', english.sheets.fridge.whereNames.source.pack],
    ['meadow-way', english.sheets.fridge.whereNames.source.vehicle],
  ])('is called what it is at %s', (name, called) => {
    const text = textOf(name, 'fridge');
    expect(text).toContain(`${called}: ____`);
    expect(text).not.toMatch(/(Backup|Water|Lights): ____/);
  });

  test('nobody in a flat is told of a house', () => {
    const { homeKind } = { homeKind: planFor('upstairs-flat').home.facts };
    expect(homeKind.is('home-kind', 'apartment')).toBe(true);
    expect(textOf('upstairs-flat', 'fridge')).not.toMatch(/your house|the house/);
  });
});

describe('what the route gives no power is set no lower, in the sheet or on the first page', () => {
  const lower = english.measure('heat-lower').short;

  test.each(['orchard-bend', 'elm-row'])('%s: the furnace is off at once', (name) => {
    const plan = planFor(name);
    const taken = plan.waysOfLiving.measures.find(({ id }) => id === 'heat-lower')!;
    expect(taken.loads.every((id) => plan.ladder[0]!.switchOff.includes(id))).toBe(true);
    expect(plan.advice.route.way).toBe('thrifty');
    const fridge = textOf(name, 'fridge');
    expect(fridge).toContain('Only while you live thriftily');
    expect(fridge).not.toContain(lower);
    expect(textOf(name, 'family')).not.toContain(lower);
  });

  test('what does without power altogether is still said', () => {
    expect(textOf('orchard-bend', 'fridge')).toContain(english.measure('stove-heat').short);
    expect(textOf('elm-row', 'fridge')).toContain(english.measure('lantern').short);
  });
});
