import { describe, expect, test } from 'vitest';
import { answersOf } from '../../households/read-household';
import { missingPowers, powersIn, quoteAsPlanFile } from '../../soak/never/quote-figures';
import { seenOf } from '../../soak/seen';

describe('watts and volt-amps of the sheet to quote from', () => {
  const seen = seenOf(answersOf('ridge-road'));

  test('are those of the plan file, circuit by circuit', () => {
    expect(powersIn(seen.data.electrical.scope.circuits[0]!.watts).length).toBeGreaterThan(0);
    expect(quoteAsPlanFile(seen)).toEqual([]);
  });

  test('one that is another in the plan file is found', () => {
    const { data } = seen;
    const { scope } = data.electrical;
    const circuits = scope.circuits.map((one) => ({ ...one, watts: '77 W (70 to 80 W)' }));
    const other = { ...data, electrical: { ...data.electrical, scope: { ...scope, circuits } } };
    expect(quoteAsPlanFile({ ...seen, data: other })).not.toEqual([]);
    expect(quoteAsPlanFile({ ...seen, file: 'continuous: 1 W' })).not.toEqual([]);
  });

  test('are read as they are printed, ranges and thousands of watts too', () => {
    expect(
      powersIn('Continuous: 9,500 W (9,000 W to 12.5 kW) and 2,036 VA (1,192 to 3,340 VA)'),
    ).toEqual([
      { unit: 'W', value: 9500 },
      { unit: 'W', value: 9000 },
      { unit: 'W', value: 12500 },
      { unit: 'VA', value: 2036 },
      { unit: 'VA', value: 1192 },
      { unit: 'VA', value: 3340 },
    ]);
    expect(missingPowers([{ unit: 'W', value: 12_345 }], powersIn('12.3 kW'))).toEqual([]);
    expect(missingPowers([{ unit: 'VA', value: 900 }], powersIn('900 W'))).toEqual(['900 VA']);
  });
});
