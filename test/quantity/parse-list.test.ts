import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseList } from '../../src/quantity/parse-list';

const read = (text: string, count = 3) => parseList(text, { unit: 'kWh', count });

describe('several numbers in one line', () => {
  it.each([
    '910 850 1050',
    '910,850,1050',
    '910, 850, 1,050',
    '910 850 1,050',
    '910; 850; 1,050',
    ' 910 kWh, 850 kWh,  1050 kWh ',
    '910kWh 850kWh 1050kWh',
    '910,850,1050,',
  ])('reads %j', (text) => {
    expect(read(text)).toEqual({ ok: true, values: [910, 850, 1050] });
  });

  it('says how many it found where the count is wrong', () => {
    expect(read('910 850')).toEqual({ ok: false, problem: 'count', found: 2 });
    expect(read('910,850')).toEqual({ ok: false, problem: 'count', found: 2 });
    expect(read('1,910 1,850')).toEqual({ ok: false, problem: 'count', found: 2 });
    expect(read('910')).toEqual({ ok: false, problem: 'count', found: 1 });
    expect(read('1 2 3 4')).toEqual({ ok: false, problem: 'count', found: 4 });
  });

  it('names the piece that is no number, before it counts', () => {
    expect(read('910 abc')).toEqual({ ok: false, problem: 'no-number', heard: 'abc' });
    expect(read('910 8o0 700')).toEqual({ ok: false, problem: 'no-number', heard: '8o0' });
    expect(read('jan 910 850')).toEqual({ ok: false, problem: 'no-number', heard: 'jan' });
    expect(read('910 850 10-20')).toEqual({ ok: false, problem: 'no-number', heard: '10-20' });
    expect(read('910 850 30V')).toMatchObject({ ok: false, problem: 'no-number' });
  });

  it('finds nothing in an empty line', () => {
    for (const text of ['', '  ', ',', ' ; ']) {
      expect(read(text)).toEqual({ ok: false, problem: 'empty' });
    }
  });

  it('reads back any twelve numbers, however they are parted, and never throws', () => {
    const twelve = fc.array(fc.integer({ min: 0, max: 9999 }), { minLength: 12, maxLength: 12 });
    fc.assert(
      fc.property(twelve, fc.constantFrom(' ', ', ', '; ', ',', '  '), (values, between) => {
        expect(read(values.join(between), 12)).toEqual({ ok: true, values });
      }),
    );
    fc.assert(fc.property(fc.string(), (text) => void read(text, 12)));
  });
});
