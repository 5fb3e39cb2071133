import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatQuantity } from '../../src/quantity/format-quantity';
import { parseQuantity } from '../../src/quantity/parse-quantity';

const value = (text: string, unit: string, volts?: number) => {
  const read = parseQuantity(text, { unit, volts });
  return read.ok ? read.value : read;
};

describe('a number as people write it', () => {
  it.each([
    ['1,500', 'W', 1500],
    ['1 500', 'W', 1500],
    ['1\u00a0500 W', 'W', 1500],
    ['1\u202f500', 'W', 1500],
    ['1500 watts', 'W', 1500],
    ['1500W', 'W', 1500],
    ['1.5 kW', 'W', 1500],
    ['1.5KW', 'W', 1500],
    ['1.5k', 'W', 1500],
    ['about 600', 'W', 600],
    ['~600 W', 'W', 600],
    ['010', 'W', 10],
    ['.5', 'kW', 0.5],
    ['800 W', 'kW', 0.8],
    ['1,234,567', '$', 1234567],
    ['828 VA', 'W', 828],
    ['12 kVA', 'W', 12000],
    ['100', 'A', 100],
    ['100 amp', 'A', 100],
    ['100-amp', 'A', 100],
    ['240 V 30 A', 'A', 30],
    ['7.2a', 'A', 7.2],
    ['910 kWh', 'kWh', 910],
    ['910 kWh a month', 'kWh', 910],
    ['1.2 MWh', 'kWh', 1200],
    ['1,070 Wh', 'kWh', 1.07],
    ['250 gallons', 'gal', 250],
    ['60 miles', 'mi', 60],
    ['160.9344 km', 'mi', 100],
    ['40%', '%', 40],
    ['40 percent', '%', 40],
    ['3 people', 'people', 3],
    ['two', 'count', 2],
    ['2 fridges', 'count', 2],
    ['none', 'count', 0],
    ['1965', 'year', 1965],
    ['1960s', 'year', 1960],
    ['4 times a year', 'per year', 4],
    ['twice a year', 'per year', 2],
    ['3x', 'per year', 3],
    ['1 per month', 'per year', 12],
    ['-5 °F', 'F', -5],
    ['\u22125', 'F', -5],
    ['1,800 sq ft', 'ft2', 1800],
    ['1800 ft²', 'ft2', 1800],
    ['1800 square feet', 'ft2', 1800],
  ])('reads %s as %s', (text, unit, expected) => {
    expect(value(text, unit)).toBe(expected);
  });

  it.each([
    ['3/4 hp', 0.75],
    ['¾ hp', 0.75],
    ['1 1/2 hp', 1.5],
    ['1-1/2 HP', 1.5],
    ['1½ hp', 1.5],
    ['1 ½', 1.5],
    ['0.5hp', 0.5],
    ['½', 0.5],
    ['3⁄4 hp', 0.75],
    ['746 W', 1],
    ['0.373 kW', 0.5],
  ])('reads a motor size of %s', (text, expected) => {
    expect(value(text, 'hp')).toBeCloseTo(expected, 9);
  });

  it.each([
    ['3 days', 72],
    ['2 weeks', 336],
    ['a week', 168],
    ['90 min', 1.5],
    ['1h30', 1.5],
    ['1 h 30 min', 1.5],
    ['2 days 6 hours', 54],
    ['half an hour', 0.5],
    ['8 hours a day', 8],
    ['24', 24],
  ])('reads a time of %s', (text, expected) => {
    expect(value(text, 'h')).toBe(expected);
  });

  it('reads minutes from hours, and minutes in the hour', () => {
    expect(value('1.5 h', 'min')).toBe(90);
    expect(value('10 min an hour', 'min')).toBe(10);
    expect(value('1h30', 'min')).toBe(90);
  });

  it.each([
    ['3 tons', 3],
    ['3-ton', 3],
    ['36,000 Btu', 3],
    ['36k btu/h', 3],
    ['36kBtu', 3],
    ['2.5', 2.5],
  ])('reads a cooling size of %s', (text, expected) => {
    expect(value(text, 'tons')).toBe(expected);
  });

  it.each([
    ['$1,800', '$', 1800],
    ['1.8k', '$', 1800],
    ['$1.8k', '$', 1800],
    ['1800 dollars', '$', 1800],
    ['19¢', 'c/kWh', 19],
    ['19 cents', 'c/kWh', 19],
    ['19 c/kWh', 'c/kWh', 19],
    ['$0.19', 'c/kWh', 19],
    ['$0.29/kWh', 'c/kWh', 29],
    ['0.19', 'c/kWh', 19],
    ['19.4', 'c/kWh', 19.4],
  ])('reads money: %s as %s', (text, unit, expected) => {
    expect(value(text, unit)).toBe(expected);
  });

  it.each([
    ['2 ft 6 in', 2.5],
    [`2'6"`, 2.5],
    ['30 in', 2.5],
    ['8 yards', 24],
    ['200 feet', 200],
  ])('reads a length of %s', (text, expected) => {
    expect(value(text, 'ft')).toBe(expected);
  });

  it('knows meters, liters and Celsius by their exact definitions (NIST SP 811, Appendix B)', () => {
    expect(value('0.3048 m', 'ft')).toBeCloseTo(1, 9);
    expect(value('3.785411784 liters', 'gal')).toBeCloseTo(1, 9);
    expect(value('20 °C', 'F')).toBeCloseTo(68, 9);
    expect(value('-40 C', 'F')).toBeCloseTo(-40, 9);
  });
});

describe('volts and amps off a label', () => {
  it.each([
    '115 V 7.2 A',
    '7.2A x 115V',
    '115V, 7.2A',
    '115 volts at 7.2 amps',
    '115v×7.2a',
    '115V7.2A',
  ])('reads %s as 828 W', (text) => {
    const read = parseQuantity(text, { unit: 'W' });
    expect(read).toEqual({ ok: true, value: 828, note: '115 V x 7.2 A = 828 W' });
  });

  it('uses the volts of the question for amps typed alone', () => {
    const read = parseQuantity('7.2 amps', { unit: 'W', volts: 115 });
    expect(read).toEqual({ ok: true, value: 828, note: '115 V x 7.2 A = 828 W' });
  });

  it('refuses amps alone when the volts are not known', () => {
    const read = parseQuantity('7.2 amps', { unit: 'W' });
    expect(read).toEqual({ ok: false, problem: 'other-unit', heard: 'A' });
  });

  it('multiplies volts and amp-hours of a battery, and the sides of a roof', () => {
    expect(value('12.8 V 100 Ah', 'kWh')).toBe(1.28);
    expect(value('20 ft x 15 ft', 'ft2')).toBe(300);
    expect(value('20 x 15 ft', 'ft2')).toBe(300);
    expect(value('3 x 100 W', 'W')).toBe(300);
    expect(value('115 x 7.2', 'W')).toBe(828);
  });
});

describe('what it says back', () => {
  it.each([
    ['1.5 kW', 'W', '1.5 kW = 1,500 W'],
    ['3 days', 'h', '3 days = 72 h'],
    ['36,000 btu', 'tons', '36,000 Btu = 3 tons'],
    ['$0.19', 'c/kWh', '$0.19/kWh = 19 cents/kWh'],
    ['1h30', 'h', '1 h 30 min = 1.5 h'],
    ['0.19', 'c/kWh', '$0.19 = 19 cents/kWh'],
  ])('notes the conversion of %s', (text, unit, note) => {
    expect(parseQuantity(text, { unit })).toMatchObject({ ok: true, note });
  });

  it('says nothing where nothing was converted', () => {
    expect(parseQuantity('1,500 W', { unit: 'W' })).toEqual({ ok: true, value: 1500 });
    expect(parseQuantity('3/4', { unit: 'hp' })).toEqual({ ok: true, value: 0.75 });
  });
});

describe('what it refuses', () => {
  it.each(['', '   ', '\u00a0', '.'])('finds nothing in %j', (text) => {
    expect(parseQuantity(text, { unit: 'W' })).toEqual({ ok: false, problem: 'empty' });
  });

  it.each([
    ['between 10 and 12', 'W'],
    ['lots', 'W'],
    ['NaN', 'W'],
    ['Infinity', 'W'],
    ['kW', 'W'],
    ['9'.repeat(400), 'W'],
  ])('finds no number in %s', (text, unit) => {
    expect(parseQuantity(text, { unit })).toMatchObject({ ok: false, problem: 'no-number' });
  });

  it.each([
    ['10-12', 'W'],
    ['10–12 W', 'W'],
    ['10 to 12', 'h'],
    ['10 W or 12 W', 'W'],
    ['115/230 V', 'V'],
    ['1,5', 'kW'],
    ['1.2.3', 'W'],
    ['1/0 hp', 'hp'],
    ['2 days 6', 'h'],
  ])('finds more than one number in %s', (text, unit) => {
    expect(parseQuantity(text, { unit })).toMatchObject({ ok: false, problem: 'several' });
  });

  it('throws for a unit no question may use: that is our own slip', () => {
    expect(() => parseQuantity('5 V', { unit: 'furlong' })).toThrow(RangeError);
  });

  it('keeps the words of a range, so they can be shown again', () => {
    expect(parseQuantity('10-12', { unit: 'W' })).toEqual({
      ok: false,
      problem: 'several',
      heard: '10-12',
    });
  });

  it.each([
    ['30 gal', 'W', 'gal'],
    ['1/2 hp', 'W', 'hp'],
    ['8,000 Btu', 'W', 'Btu'],
    ['115 V', 'W', 'V'],
    ['3 kW', 'tons', 'kW'],
    ['200 W', 'count', 'W'],
  ])('says which unit of %s does not fit', (text, unit, heard) => {
    expect(parseQuantity(text, { unit })).toEqual({ ok: false, problem: 'other-unit', heard });
  });

  it.each([
    ['12 bananas', 'W', 'bananas'],
    ['30 kWh/day', 'kWh', '/day'],
    ['1e5', 'W', 'e5'],
    ['30ish', 'W', 'ish'],
  ])('says which words of %s are no unit', (text, unit, heard) => {
    expect(parseQuantity(text, { unit })).toEqual({ ok: false, problem: 'words', heard });
  });
});

describe('printing and reading again', () => {
  const seed = { seed: 20261125, numRuns: 400 };
  /** Half of the last digit printed: three figures below 1000, whole numbers above. */
  const slack = (x: number, unit: string) => {
    if (unit === 'h' && x > 48) return 0.5;
    if (unit === 'h' && x < 1) return halfDigit(x * 60) / 60;
    if (unit === 'hp') return 0.005;
    if (unit === '$') return x < 100 ? 0.005 : 0.5;
    if ((unit === 'W' || unit === 'VA') && x >= 9999.5) return halfDigit(x / 1000) * 1000;
    if ((unit === 'W' || unit === 'VA') && x >= 10) return 0.5;
    return halfDigit(x);
  };
  const halfDigit = (x: number) => (x >= 100 ? 0.5 : x >= 10 ? 0.05 : x >= 1 ? 0.005 : 0.0005);

  it.each([
    ['W', 50_000],
    ['kW', 60],
    ['A', 400],
    ['V', 480],
    ['VA', 30_000],
    ['h', 1000],
    ['hp', 5],
    ['tons', 8],
    ['kWh', 10_000],
    ['gal', 2000],
    ['ft', 1500],
    ['ft2', 20_000],
    ['%', 100],
    ['$', 500_000],
    ['c/kWh', 120],
    ['people', 20],
    ['per year', 100],
    ['F', 120],
    ['in', 100],
  ])('returns %s within the printed digits', (unit, largest) => {
    const numbers = fc.double({ min: unit === 'c/kWh' ? 1 : 0.001, max: largest, noNaN: true });
    fc.assert(
      fc.property(numbers, (x) => {
        const text = formatQuantity(x, unit);
        const read = parseQuantity(text, { unit });
        expect(read.ok, text).toBe(true);
        const kept = read.ok ? read.value : Infinity;
        expect(Math.abs(kept - x), text).toBeLessThanOrEqual(slack(x, unit) + 1e-9);
      }),
      seed,
    );
  });

  it('never gives a value that is not finite, whatever is typed', () => {
    const bits = fc.constantFrom(
      '1',
      '0',
      '9',
      '.',
      ',',
      '-',
      '/',
      ' ',
      'x',
      'k',
      'W',
      'A',
      'V',
      'h',
      '½',
      '$',
      '%',
      'to',
      'e',
      "'",
      '"',
      'day',
      'Btu',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.array(bits, { maxLength: 12 }).map((parts) => parts.join('')),
        ),
        fc.constantFrom('W', 'h', 'hp', 'ft', 'c/kWh', 'count', 'F', 'ft2', '$', 'kWh'),
        (text, unit) => {
          const read = parseQuantity(text, { unit, volts: 115 });
          if (read.ok) expect(Number.isFinite(read.value)).toBe(true);
          else
            expect(['empty', 'no-number', 'other-unit', 'several', 'words']).toContain(
              read.problem,
            );
        },
      ),
      { seed: 20261125, numRuns: 3000 },
    );
  });
});
