import { expect, test } from 'vitest';
import { fuelStorage } from '../../src/tables/fuel-storage';
import { namedValue } from '../../src/tables/named-values';

// NFPA 58 as explained by the Minnesota State Fire Marshal, "LP gas inside buildings".
test.each([
  ['propane-cylinder-indoors-lb', 1, 'lb'],
  ['propane-indoors-water-capacity-lb', 5.4, 'lb'],
  ['propane-gas-per-gal', 270, 'gal'],
])('%s is %f %s (NFPA 58, Minnesota State Fire Marshal)', (id, value, unit) => {
  expect(namedValue(fuelStorage, id)).toMatchObject({ value, unit, standing: 'published' });
});

test('gasoline limits are from memory and say so', () => {
  for (const row of fuelStorage.rows.filter((r) => r.id.startsWith('gasoline'))) {
    expect(row.standing).toBe('memory');
  }
});
