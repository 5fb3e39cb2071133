import { describe, expect, test } from 'vitest';
import { sheetToMarkdown } from '../../../src/papers/sheets/sheet-to-markdown';
import { sheetsOf } from '../../../src/papers/sheets/sheets-of';
import { thereAlready } from '../../../src/plan/electrical/there-already';
import { ruleRows } from '../../../src/tables/rules';
import { english } from '../../../src/words/en';
import { planOf } from '../../households/read-household';

/** Words are looked at, no odds: a few drawn years will do. */
const planFor = (name: string) => planOf(name, {}, 5);
const quoteOf = (name: string) =>
  sheetToMarkdown(sheetsOf(planFor(name), english).find((sheet) => sheet.id === 'quote')!).replace(
    /\s+/g,
    ' ',
  );

describe('a battery and panels that are there', () => {
  const plan = planFor('sunny-fork');
  const quote = quoteOf('sunny-fork');

  test('stand in the diagram by their labels as told, not as planning sizes', () => {
    expect(plan.advice.route.kind).toBe('own-battery');
    expect(thereAlready(plan.advice.route)).toMatchObject({
      batteryKwh: 13.5,
      solarKw: 5,
      buys: { battery: false, solar: false },
    });
    expect(quote).toContain('13.5 kWh, as told');
    expect(quote).toContain('5 kW, as told');
    expect(quote).not.toContain('planning size');
  });

  test('are not asked for in a quote: no energy, no warranty, no listing of cells', () => {
    for (const word of ['five years old', 'arranty', 'UL 1973', 'UL 61730', 'Usable kWh'])
      expect(quote, word).not.toContain(word);
    expect(plan.electrical.scope.requirements).toEqual([]);
    expect(plan.electrical.scope.quotePoints).toEqual([]);
  });

  test('what is to be bought is asked for as before', () => {
    const bought = quoteOf('orchard-bend');
    expect(planFor('orchard-bend').advice.route.usableKwh).toBeGreaterThan(0);
    expect(thereAlready(planFor('orchard-bend').advice.route).batteryKwh).toBeNull();
    for (const word of ['at five years old', 'warranty', 'UL 1973', 'planning size', 'Usable kWh'])
      expect(bought, word).toContain(word);
  });
});

describe('the home as it is, said to an electrician', () => {
  const theirs = ruleRows.rows.filter(
    ({ who, severity }) => who[0] === 'licensed electrician' && severity >= 4,
  );

  test('each grave caution that is first for an electrician has words for one', () => {
    expect(theirs.length).toBeGreaterThan(20);
    const speaks = theirs.filter(({ id }) => english.sheets.askedOfElectrician[id] !== undefined);
    // What only forbids asks for nobody and is never on this sheet.
    expect(theirs.filter((one) => !speaks.includes(one)).map(({ id }) => id)).toEqual([
      'no-backfeed',
    ]);
  });

  test('none speaks to the household, and none drops the listing or the limit its caution names', () => {
    for (const [id, says] of Object.entries(english.sheets.askedOfElectrician)) {
      expect(says, id).not.toMatch(/\b(yourself|your|call an electrician|an electrician must)\b/i);
      const whole = english.rules[id as keyof typeof english.rules];
      const marks = `${whole.says} ${whole.proof ?? ''}`.match(/UL \d+|\d+ °F|\d+ seconds|CPSC/g);
      for (const mark of marks ?? []) expect(says, `${id}: ${mark}`).toContain(mark);
    }
  });
});
