import { expect, test } from 'vitest';
import { vaAsPrinted } from '../../../src/commands/calc/amps-as-printed';

// VA = A x V, single phase: how a label prints it, in either order.
test.each([
  ['24 A 240 V', 5760],
  ['7.5 amps at 230 volts', 1725],
  ['115 V, 8 A', 920],
  ['115V 8A', 920],
])('"%s" is %i VA', (text, va) => {
  expect(vaAsPrinted(text)).toBeCloseTo(va, 9);
});

test.each(['24 A', '240 V', '5 kW', 'A V', '8 A 115', '8 A 115 V 60 Hz'])(
  '"%s" is not amps with their volts',
  (text) => {
    expect(vaAsPrinted(text)).toBeNull();
  },
);
